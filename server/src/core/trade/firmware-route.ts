// How a board’s firmware is updated: one instruction a sentence, of at most 20 words, route by route.

/** What the build may say of an instruction: shown beside it, or left to be written in. */
export type RouteDetail =
  | 'version'
  | 'filesystem'
  | 'file name'
  | 'port'
  | 'cables'
  | 'older processor'
  | 'memory profile';

export interface RouteStep {
  readonly text: string;
  readonly detail?: RouteDetail;
  /** The moment from which the board must not lose power: the caution stands before it. */
  readonly writes?: true;
}

export const UPDATE_ROUTES = [
  'stick without processor',
  'older processor',
  'service',
  'with this processor',
  'management controller',
] as const;
export type UpdateRoute = (typeof UPDATE_ROUTES)[number];

export interface Route {
  /** What can be done before the board is on the bench. */
  readonly before: readonly RouteStep[];
  readonly update: readonly RouteStep[];
}

const handbook: RouteStep = { text: 'Read the chapter on firmware updates in the board’s handbook.' };
const file: readonly RouteStep[] = [
  { text: 'Fetch the file of this version from the board’s maker.', detail: 'version' },
  { text: 'Compare the file’s checksum with the one that its maker prints.' },
];
const stick: readonly RouteStep[] = [
  handbook,
  ...file,
  { text: 'Format the stick with this file system.', detail: 'filesystem' },
  { text: 'Copy the file on to the stick.' },
];
const wait: RouteStep = { text: 'Wait until the board says that it is done.' };
const fromMenu: readonly RouteStep[] = [
  { text: 'Check that the memory runs at its standard speed.', detail: 'memory profile' },
  { text: 'Put the stick into a USB port at the back.', detail: 'port' },
  { text: 'Open the update page in the firmware.' },
  { text: 'Choose the file on the stick.' },
  { text: 'Start the update.', writes: true },
  wait,
  { text: 'Read the version that the firmware now shows.', detail: 'version' },
  { text: 'Load the default settings.' },
];

/** Source: common practice; makers’ handbooks, which come before it. */
export const FIRMWARE_ROUTES: Readonly<Record<UpdateRoute, Route>> = {
  'stick without processor': {
    before: [...stick, { text: 'Give the file the name that the board looks for.', detail: 'file name' }],
    update: [
      { text: 'Check that these power connectors are plugged in.', detail: 'cables' },
      { text: 'Put the stick into the port for updates.', detail: 'port' },
      { text: 'Start the update by its button, as the handbook says.', writes: true },
      wait,
      { text: 'Take the stick out.' },
    ],
  },
  'older processor': {
    before: stick,
    update: [{ text: 'Check that the older processor is in.', detail: 'older processor' }, ...fromMenu],
  },
  'with this processor': { before: stick, update: fromMenu },
  'management controller': {
    before: [handbook, ...file],
    update: [
      { text: 'Connect the network cable of the management controller.' },
      { text: 'Open the update page of the controller.' },
      { text: 'Choose the file.' },
      { text: 'Start the update.', writes: true },
      wait,
      { text: 'Read the version that the controller now shows.', detail: 'version' },
    ],
  },
  service: {
    before: [
      { text: 'Name the version that the board needs.', detail: 'version' },
      { text: 'Hand the board to the service, in its bag and box.' },
      { text: 'Ask for the installed version in writing.' },
    ],
    update: [],
  },
};
