// Why files and folders are not read, in the same words on every host.
import type { ReadError } from './host';
import { limits, spelled } from './limits';

export const absent: ReadError = { trouble: 'there is no such file or folder.' };
export const notRegular: ReadError = { trouble: 'is no regular file, so it is not opened.' };
export const isFolder: ReadError = { trouble: 'is a folder, where a file was expected.' };
export const leadsOut: ReadError = { trouble: 'leads out of the workspace, so it is not read.' };
export const throughLink: ReadError = {
  trouble: 'is reached through a link, which the editor cannot follow to its end, so it is not read.',
};
export const tooLarge: ReadError = {
  trouble: `is larger than ${spelled(limits.fileBytes)} bytes, so it is not read; split it.`,
};
export const tooFull: ReadError = {
  trouble: `holds more than ${spelled(limits.folderEntries)} entries, so it is not looked into; split it.`,
};
