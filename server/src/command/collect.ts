// `fettle collect`: prints the script by which a technician reads a finished machine. Fettle itself starts nothing.
import { Argument, type Command } from 'commander';
import { collectOnLinux } from '../report/collect-linux';
import { collectOnWindows } from '../report/collect-windows';
import type { Status, World } from './world';

const scripts = { linux: collectOnLinux, windows: collectOnWindows } as const;

export function addCollect(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('collect')
    .summary('print the script that reads a finished machine')
    .description(
      'Prints a short script that writes what common tools say of a machine into one folder, for `fettle verify`. ' +
        'Read it, then run it yourself on that machine: Fettle starts no program. Serial numbers are masked.',
    )
    .addArgument(new Argument('<system>', 'what the machine runs').choices(Object.keys(scripts)))
    .addHelpText('after', '\nExit status: 0 printed; 2 the run itself failed.')
    .action((system: keyof typeof scripts) => {
      world.out(scripts[system]);
      end(0);
    });
}
