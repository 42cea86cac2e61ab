// What a session asks of hosts, under one name.
export { houseName, isTrouble, staysBelow, within, type Awaitable, type ReadError } from '../host/host';
export type { AddressedHost } from '../host/addressed';
