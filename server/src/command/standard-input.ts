// The text on standard input, judged as if it stood in the workspace; and options that do not go together.
import { isTrouble } from '../host/host';
import { WithText } from '../host/with-text';
import { shortPath } from '../session/run-trouble';
import { refusal, type World } from './world';

/** The world with the text on standard input laid over a path. @throws Refusal where that cannot be. */
export async function withInput(path: string, world: World): Promise<World> {
  const text = await world.input();
  if (isTrouble(text)) throw refusal`standard input ${text}`;
  const host = await WithText.over(world.host, path, text);
  if (isTrouble(host)) throw refusal`${shortPath(path)}: ${host}`;
  return { ...world, host };
}

interface Together {
  readonly stdin?: true;
  readonly as?: string;
  readonly mend?: true;
  readonly show?: true;
  readonly watch?: true;
  readonly format?: string;
  readonly output?: string;
  readonly recordKnown?: string;
  readonly onlyNew?: string;
  readonly shard?: object;
  readonly cache?: string;
  readonly settingsFrom?: string;
  readonly workers?: number;
}

/** @throws Refusal where options were given that do not go together. */
export function refuseAtOdds(options: Together, paths: readonly string[]): void {
  const { stdin, as, mend, show, watch, recordKnown } = options;
  if (stdin && as === undefined) throw refusal`--stdin asks where the text is to stand: --as desk.pcbuild.yaml.`;
  if (as !== undefined && !stdin) throw refusal`--as says where a text on standard input stands; add --stdin.`;
  if (stdin && paths.length > 0) throw refusal`--stdin checks one text; name no other paths.`;
  if (show && !mend) throw refusal`--show shows what --mend would change; add --mend.`;
  if (
    watch &&
    (stdin || mend || recordKnown !== undefined || options.output !== undefined || options.format !== 'text')
  )
    throw refusal`--watch writes text to the terminal as files change; leave the other option out.`;
  const isOther = stdin || mend || watch || recordKnown !== undefined || options.onlyNew !== undefined;
  if (options.shard && isOther) throw refusal`--shard judges a share of a whole run; leave the other option out.`;
  if (
    options.cache !== undefined &&
    (isOther || options.shard || options.workers || options.settingsFrom !== undefined)
  )
    throw refusal`--cache keeps the judgements of a whole run on one thread; leave the other option out.`;
  if (options.cache !== undefined && options.format !== 'text' && options.format !== 'json')
    throw refusal`--cache keeps what is written as text or JSON; choose one of these formats.`;
  if (options.shard && options.format !== 'json')
    throw refusal`--shard writes a report for \`fettle merge\`; add --format json.`;
  if (stdin && mend && !show) throw refusal`--mend changes files, not standard input; add --show for a diff.`;
}
