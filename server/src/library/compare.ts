// Two workspaces compared for a caller.
import { compareSides } from '../command/comparing';
import type { Side } from '../command/sides';
import type { CompareOptions, Comparison, Workspace } from './face';
import { dayOf } from './judge';
import { OpenWorkspace } from './workspace';

export function compareWorkspaces(before: Workspace, after: Workspace, options: CompareOptions): Promise<Comparison> {
  const on = dayOf(options.on);
  return compareSides(sideOf(before, on), sideOf(after, on), on);
}

function sideOf(workspace: Workspace, on: string): Side {
  const { host, label, loader } = OpenWorkspace.inside(workspace);
  return { host, loader: loader(on), path: '.', label };
}
