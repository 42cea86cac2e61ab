// The task *check all builds*: runs the command in the editor’s terminal, and its matchers read what it finds.
import {
  ShellExecution,
  ShellQuoting,
  Task,
  TaskScope,
  tasks,
  workspace,
  type Disposable,
  type TaskDefinition,
} from 'vscode';

const taskType = 'fettle';
const matchers = ['$fettle', '$fettle-shortfall', '$fettle-note'];

interface Definition extends TaskDefinition {
  readonly command?: string;
  readonly paths?: readonly string[];
  readonly from?: string;
}

/** Offers the task in each folder that someone has open, and completes those that a folder spells out. */
export const offerTask = (): Disposable =>
  tasks.registerTaskProvider(taskType, {
    provideTasks: () => (workspace.workspaceFolders ?? []).map((folder) => checking({ type: taskType }, folder)),
    resolveTask: (task) => checking(task.definition, task.scope ?? TaskScope.Workspace),
  });

function checking(definition: TaskDefinition, scope: NonNullable<Task['scope']>): Task {
  const { command = 'fettle', paths = ['.'], from = 'note' } = definition as Definition;
  const words = ['check', '--format', 'lines', '--from', from, '--', ...paths];
  // Each word in quotes of its own: a path is never read by the shell.
  const quoted = [command, ...words].map((value) => ({ value: String(value), quoting: ShellQuoting.Strong }));
  const run = new ShellExecution(quoted[0]!, quoted.slice(1));
  return new Task(definition, scope, 'check all builds', 'Fettle', run, matchers);
}
