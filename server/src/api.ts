// The library face of the npm package: gives its functions this machine’s folders and revisions.
import { resolve } from 'node:path';
import { version as packed } from '../../package.json';
import { openRevision } from './host/git';
import { NodeHost } from './host/node';
import { compareWorkspaces } from './library/compare';
import type * as face from './library/face';
import { judgeIn } from './library/judge';
import { openWorkspace, type Machine } from './library/workspace';

const machine: Machine = {
  folder: (path) => new NodeHost(resolve(path)),
  revision: (path, revision) => openRevision(resolve(path), revision, process.env),
};

export const version: typeof face.version = packed;
export const readWorkspace: typeof face.readWorkspace = (from, options = {}) => openWorkspace(from, options, machine);
export const judgeBuild: typeof face.judgeBuild = (workspace, file, options = {}) => judgeIn(workspace, file, options);
export const compare: typeof face.compare = async (before, after, options = {}) =>
  compareWorkspaces(before, after, options);
