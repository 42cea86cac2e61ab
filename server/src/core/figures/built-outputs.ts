// Outputs that displays of a machine hang on, by kind: how a system numbers them, no board prints.
import type { Build } from '../build/build';
import type { BuiltDisplay } from '../manifest/as-built';
import type { Fact } from '../parts/fact';
import { connectorKind } from '../trade/reported';
import type { Display } from './display';
import { portOf } from './display-paths';

/** The kind of output that a display is to hang on, and on which it is seen, with the facts that tell. */
export interface OutputKinds {
  readonly isSame: boolean;
  readonly facts: readonly Fact<unknown>[];
}

/** Undefined where either is not told. */
export function outputKinds(build: Build, display: Display, { connector }: BuiltDisplay): OutputKinds | undefined {
  const port = portOf(build, display);
  const outputs = [
    build.parts.board?.part['display-outputs'].value,
    ...build.parts.graphics.map(({ part }) => part.outputs.value),
  ];
  const link = outputs.map((one) => one?.get(port.value ?? '')?.link).find((one) => one?.value !== undefined);
  const is = connectorKind(connector.value ?? '');
  const wanted = kindOfOutput(link?.value ?? port.value ?? '');
  return is && wanted && { isSame: is === wanted, facts: [connector, port, ...(link ? [link] : [])] };
}

function kindOfOutput(text: string): ReturnType<typeof connectorKind> {
  return /^(?:mini ?)?(?:DP|DisplayPort)/i.test(text) ? 'DisplayPort' : connectorKind(text);
}
