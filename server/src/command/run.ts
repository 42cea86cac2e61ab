// The command as a whole: its sub-commands, and how every run ends in status 0, 1 or 2.
import { Command, CommanderError, Option } from 'commander';
import { visible } from '../core/text';
import type { Language } from '../core/words/language';
import { languageIn, type Tag, tags } from '../core/words/languages';
import { safe } from '../report/layout';
import { addCheck } from './check';
import { addCollect } from './collect';
import { addCompare } from './compare';
import { addDraft } from './draft';
import { addExplain } from './explain';
import { addGuide } from './guide';
import { addMerge } from './merge';
import { addMissing } from './missing';
import { addNew } from './new';
import { addOrder } from './order';
import { addSettings } from './settings';
import { addSheet } from './sheet';
import { addSwap } from './swap';
import { addUses } from './uses';
import { addVerify } from './verify';
import { Refusal, type Status, type World } from './world';

const subCommands = [
  addCheck,
  addCollect,
  addCompare,
  addDraft,
  addExplain,
  addGuide,
  addMerge,
  addMissing,
  addNew,
  addOrder,
  addSettings,
  addSheet,
  addSwap,
  addUses,
  addVerify,
];

/** Runs the command with the words that follow its name. Never throws. */
export async function run(words: readonly string[], world: World): Promise<Status> {
  let status: Status = 0;
  const program = new Command('fettle')
    .description('Checks the builds of personal computers as they are written.')
    .version(world.version, '--version', 'Print the version.')
    .helpOption('--help', 'Print this help.')
    .addOption(new Option('--language <language>', 'the language of messages').choices(tags))
    .exitOverride()
    .configureOutput({
      writeOut: world.out,
      writeErr: world.err,
      getOutHelpWidth: () => 100,
      getErrHelpWidth: () => 100,
      outputError: (text, write) => write(refusal(text)),
    })
    .showSuggestionAfterError();
  const told: World = { ...world, language: () => asked(program) ?? world.language() };
  for (const add of subCommands) add(program, told, (end) => (status = end));
  for (const command of program.commands)
    for (const one of [command, ...command.commands]) one.exitOverride().copyInheritedSettings(program);
  try {
    await program.parseAsync([...words], { from: 'user' });
    return status;
  } catch (error) {
    return failed(error, told);
  }
}

/** The language that the command line asks for. */
function asked(program: Command): Language | undefined {
  const { language } = program.opts<{ language?: Tag }>();
  return language && languageIn(language);
}

/**
 * A refusal as commander words it, with the words of the command line in it made visible; the line of a suggestion
 * holds our own names only.
 */
function refusal(text: string): string {
  const [, said, ending] = /^([^]*?)((?:\n\(Did you mean [^\n]*\))?\n?)$/.exec(text)!;
  return visible(said!) + ending!;
}

const faultWords = (error: unknown, language: Language): string =>
  language.words`the run failed by a fault of its own: ${error instanceof Error ? error.message : String(error)}`;

/** Help that was asked for is no failure; anything else is, in one line. */
function failed(error: unknown, world: World): Status {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
  if (error instanceof Refusal) world.err(`fettle: ${safe(error.said(world.language()))}\n`);
  else world.err(`fettle: ${safe(faultWords(error, world.language()))}\n`);
  return 2;
}
