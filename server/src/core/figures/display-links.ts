// Figures of what a promised mode needs of its output, beside what the output and the display on it carry.
import type { Build } from '../build/build';
import { displaysOn, outputNamed, type Display, type Output } from './display';
import { carriedThrough, compressed, compressedPayload, needed, payload, type PromisedMode } from './display-rates';
import type { Figure } from './figure';
import { memo, memoOf } from './memo';

/** What a promised mode needs, and what its output carries; of a compressed picture too where that is accepted. */
export const sidesOf = memoOf((build: Build, promise: PromisedMode) => {
  const output = outputNamed(build, promise.port);
  const isHdmi = !('missingFacts' in output) && output.connector === 'hdmi';
  const mode = promise.mode.value!;
  return {
    output,
    plain: needed(mode, promise, isHdmi),
    carried: carriedThrough(build, output, payload),
    squeezed: promise.compression.value === true ? compressed(mode, promise) : undefined,
    carriedSqueezed: carriedThrough(build, output, compressedPayload),
  };
});

/** One way of a picture out of the machine: a promised mode, a display, or both, and the output they name. */
export interface DisplayLink {
  readonly promise?: PromisedMode;
  readonly displays: readonly Display[];
  readonly output: Output | undefined;
  readonly carried: Figure;
  /** Undefined where no mode is promised, or it has no timing. */
  readonly needed?: Figure;
  readonly squeezed?: { readonly needed: Figure; readonly carried: Figure };
}

/** Every promised mode with its output and display, then the displays for which no mode is promised. */
export const displayLinks = memo((build: Build): readonly DisplayLink[] => {
  const promises = (build.file.expect.displays.value ?? []).filter(({ mode }) => mode.value !== undefined);
  const links = promises.map((promise): DisplayLink => {
    const { output, plain, carried, squeezed, carriedSqueezed } = sidesOf(build, promise);
    const port = promise.port.value;
    return {
      promise,
      displays: port === undefined ? [] : displaysOn(build, port),
      output: 'missingFacts' in output ? undefined : output,
      carried,
      needed: plain,
      ...(squeezed ? { squeezed: { needed: squeezed, carried: carriedSqueezed } } : {}),
    };
  });
  const shown = new Set(links.flatMap(({ displays }) => displays));
  const others = build.parts.displays.filter((display) => !shown.has(display));
  return [
    ...links,
    ...others.map((display): DisplayLink => {
      const output = outputNamed(build, display.at.port);
      return {
        displays: [display],
        output: 'missingFacts' in output ? undefined : output,
        carried: carriedThrough(build, output, payload),
      };
    }),
  ];
});
