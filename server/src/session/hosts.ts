// What a session asks of hosts, under one name.
export { houseName, isTrouble, staysBelow, within, type Awaitable, type Trouble } from '../host/host';
export type { AddressedHost } from '../host/addressed';
