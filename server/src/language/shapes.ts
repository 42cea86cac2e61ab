// Whether what a client sends has the shape it should: validators compiled from `message-validators.ts` by `npm run
// generate`.
import type { Grade } from '../core/manifest/house-file';
import type { ClientOptions, HintSettings, Settings, ToClient } from './requests';
import * as valid from './shapes-valid';

export const isClientOptions = (value: unknown): value is ClientOptions => valid.clientOptions(value);
export const isFoundPath = (value: unknown): value is ToClient['fettle/findPath']['result'] => valid.foundPath(value);
export const isReadFile = (value: unknown): value is ToClient['fettle/readFile']['result'] => valid.readFile(value);
export const isListedFolder = (value: unknown): value is ToClient['fettle/listFolder']['result'] =>
  valid.listedFolder(value);

/** What is wrong with the parameters of a message; undefined where they have their shape, or none is known for it. */
export function misshapen(method: string, params: unknown): string | undefined {
  const validate = valid.byMethod[method];
  if (!validate || validate(params)) return undefined;
  const [error] = validate.errors ?? [];
  const where = `params${(error?.instancePath ?? '').replaceAll('/', '.')}`;
  return `the parameters are not of their shape: ${where} ${error?.message ?? ''}`;
}

export const defaultSettings: Settings = {
  from: 'unknown',
  pause: 1500,
  hints: { link: true, power: true, clearance: true, endurance: true, firmware: true },
};

/** Settings as they hold; with what is wrong, for the log, and the defaults in its place. */
export function settingsOf(value: unknown): { settings: Settings; problem?: string } {
  if (value === null || value === undefined) return { settings: defaultSettings };
  if (valid.settings(value)) {
    const { from, pause, hints } = value as { from?: Grade; pause?: number; hints?: Partial<HintSettings> };
    const own = {
      from: from ?? defaultSettings.from,
      pause: pause ?? defaultSettings.pause,
      hints: { ...defaultSettings.hints, ...hints },
    };
    return { settings: own };
  }
  const [error] = valid.settings.errors ?? [];
  return {
    settings: defaultSettings,
    problem:
      `The setting fettle${(error?.instancePath ?? '').replaceAll('/', '.')} ` +
      `${error?.message ?? 'cannot be read'}; the default is used.`,
  };
}
