// A display’s mode where resolution and refresh rate stand on lines of their own.
import type { Kind } from '../parts/kinds';
import { isElsewhere, labelKey, plainLine, withoutMarks } from './clean';
import type { Line } from './columns';
import type { Found } from './draft';

const RATES = new Set(
  [
    'refresh rate',
    'max refresh rate',
    'maximum refresh rate',
    'refresh rate (max)',
    'vertical refresh rate',
    'refresh rate (max.)',
    'max. refresh rate',
    'bildwiederholfrequenz',
    'bildwiederholrate',
    'bildwechselfrequenz',
    'max. bildwiederholrate',
    'max. bildwiederholfrequenz',
    'maximale bildwiederholrate',
    'vertical frequency',
    'v-sync',
    'taxa de atualização',
    'frecuencia de actualización',
    'tasa de refresco',
    'tingkat refresh',
  ].map(labelKey),
);

/** Whether a label is that of a rate, which only together with a size is a fact. */
export const isRateLabel = (label: string): boolean => RATES.has(labelKey(label));

/** The highest rate of a line: alone, of a sweep, or as the most; undefined where it hangs on something. */
function rateOf({ text }: Line): number | undefined {
  const bare = withoutMarks(plainLine(text))
    .text.replace(/^(?:up to|bis zu|max\.?)\s/i, '')
    .replace(/\s?\(?max\.?\)?$/i, '');
  const [, upper] = /^(?:\d{2,3}(?: ?Hz)? ?(?:-|–|~|to|bis) ?)?(\d{2,3}(?:[.,]\d{1,2})?) ?Hz$/i.exec(bare) ?? [];
  return upper === undefined ? byInput(bare) : Number(upper.replace(',', '.'));
}

/** `144 Hz (DisplayPort), 120 Hz (HDMI)`: each input’s own, of which the display shows the highest. */
function byInput(text: string): number | undefined {
  const pieces = text.split(/\s?[,;/]\s?/);
  const rates = pieces.map((one) => /^(\d{2,3}) ?Hz ?\((?:HDMI|DisplayPort|DP|USB-C)[^()]{0,12}\)$/i.exec(one)?.[1]);
  return rates.every((one) => one !== undefined) ? Math.max(...rates.map(Number)) : undefined;
}

/** The mode that a size and a rate come to, where the sheet names one of each. */
export function displayModes(kind: Kind, lines: readonly Line[], found: readonly Found[]): Found[] {
  if (kind !== 'display' || found.some(({ fact }) => fact.path.join() === 'modes')) return [];
  const sizes = found.filter(({ fact, isPlain }) => isPlain && fact.path.join() === '%size');
  const rated = lines.filter(({ label, heading }) => isRateLabel(label) && !isElsewhere(heading));
  const rates = new Set(rated.map(rateOf));
  const [rate] = rates;
  const [size] = sizes;
  if (!size || new Set(sizes.map(({ fact }) => fact.value)).size !== 1 || rates.size !== 1 || rate === undefined)
    return [];
  const said = `${size.fact.said}; ${plainLine(`${rated[0]!.label}: ${rated[0]!.text}`)}`;
  return [
    {
      fact: { ...size.fact, path: ['modes'], value: [`${String(size.fact.value)} @ ${rate} Hz`], said },
      isPlain: true,
    },
  ];
}
