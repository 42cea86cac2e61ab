// Figures of the paste between processor and cooler: the face it covers, how thick it lies, how much that wants.
import type { Placed } from '../build/build';
import {
  BOND_LINE_UM,
  dotRows,
  GRAINS_MM3,
  gapVolumeMm3,
  halfSphereDiameterMm,
  PASTE_EXCESS,
  type Grain,
} from '../trade/heat';
import { copyWith, between, decidedBy, derive, missing, number, type Figure } from './figure';
import { aboveZero, guarded } from './guard';
import { sentence, type Sentence } from './sentence';
import { fits, lacking, type Truth } from './truth';

const umPerMm = 1000;

/** Area of the lid's flat face: as stated, or its width times its depth. */
export function lidArea(processor: Placed<'processor'>): Figure {
  const { area, width, depth } = processor.part.lid;
  const label = `lid area of ${processor.label}`;
  if (area.entry || (!width.entry && !depth.entry)) return aboveZero(area, label);
  const sides = [
    aboveZero(width, `lid width of ${processor.label}`),
    aboveZero(depth, `lid depth of ${processor.label}`),
  ];
  return derive(label, 'area', sides, 'width × depth', (a, b) => a * b, { unit: 'mm²' });
}

/**
 * Thickness of the pressed layer: as its maker states, else the span that pastes have, with the fact still named as
 * missing.
 */
export function bondLine(paste: Placed<'paste'>): Figure {
  const fact = paste.part['bond-line'];
  const label = `bond line of ${paste.label}`;
  if (fact.value) return aboveZero(fact, label);
  return copyWith(usualBondLine(label), { missing: [missing(fact, label)] });
}

/** The span of bond lines that squeezed pastes have. */
export const usualBondLine = (label: string): Figure =>
  between(BOND_LINE_UM.low / umPerMm, BOND_LINE_UM.high / umPerMm, 'length', label, {
    unit: 'µm',
    source:
      'from memory, the upper end; a heat sink maker’s tutorial on interface materials: grease fills gaps below 50 µm',
  });

/** Whether the paste that a cooler brings lies on its base; open where a sheet says only that some is included. */
export function pasteOnBase(cooler: Placed<'cooler'>): Truth {
  const brings = cooler.part.paste;
  const what = `paste that ${cooler.label} brings`;
  if (brings.value === 'included') return lacking([missing(brings, what)], brings);
  return fits(brings, what, (word) => word !== 'none' && word !== 'tube in the box');
}

/** Volume between lid and cooler, with nothing pressed out. */
export function gapVolume(processor: Placed<'processor'>, paste: Placed<'paste'>): Figure {
  return derive(
    'volume between lid and cooler',
    'volume',
    [lidArea(processor), bondLine(paste)],
    'lid area × bond line',
    guarded((area, line) => gapVolumeMm3(area, line * umPerMm)),
    { unit: 'mm³' },
  );
}

/** Volume to bring on: what stays between the faces and what is pressed out. */
export function wantedVolume(processor: Placed<'processor'>, paste: Placed<'paste'>): Figure {
  const excess = between(PASTE_EXCESS.low, PASTE_EXCESS.high, 'count', 'paste brought on over what stays', {
    source: 'common practice',
  });
  return derive(
    'paste to bring on',
    'volume',
    [gapVolume(processor, paste), excess],
    'volume between lid and cooler × 1.2 to 1.5',
    (gap, over) => gap * over,
    { unit: 'mm³' },
  );
}

/** Width of one dot of that volume, a half sphere, to the tenth of a millimetre: nobody doses finer. */
export function dotDiameter(volume: Figure): Figure {
  return derive(
    'width of one dot',
    'length',
    [volume],
    '(12 × volume ÷ π)^⅓, a half sphere, to 0.1 mm',
    guarded((mm3) => Math.round(halfSphereDiameterMm(mm3) * 10) / 10),
    { unit: 'mm' },
  );
}

/** How a volume is laid on a lid: one dot, or several in rows where one would not reach its far ends. */
export function pattern({ part }: Placed<'processor'>, volume: Figure): Sentence {
  const { width, depth } = part.lid;
  const measured = width.value && depth.value && width.value.lo > 0 && depth.value.lo > 0;
  const rows = measured ? dotRows(width.value.hi, depth.value.hi) : { across: 1, along: 1 };
  const count = rows.across * rows.along;
  if (count === 1) return sentence`one dot ${dotDiameter(volume)} wide`;
  const dots = decidedBy(number(count, 'dots', 'one for each 35 mm of the lid, common practice'), width, depth);
  const each = derive('paste in each dot', 'volume', [volume, dots], 'paste to bring on ÷ dots', (mm3, n) => mm3 / n, {
    unit: 'mm³',
  });
  const [a, b] = [number(rows.across, 'rows of dots', dots.source), number(rows.along, 'dots a row', dots.source)];
  return sentence`in ${dots} dots, ${a} × ${b}, each ${dotDiameter(each)} wide`;
}

/**
 * What a comparison with a grain may mean, from the smallest such grain to the largest; undefined where the words
 * name none.
 */
export function grainVolume(words: string): Figure | undefined {
  const grains = /\brice\b/i.test(words)
    ? (['rice grain'] as const)
    : /\bpeas?\b/i.test(words)
      ? (['dry pea', 'fresh pea'] as const)
      : undefined;
  if (!grains) return undefined;
  const spans = grains.map((grain: Grain) => GRAINS_MM3[grain]);
  return between(
    Math.min(...spans.map((span) => span.low)),
    Math.max(...spans.map((span) => span.high)),
    'volume',
    `volume of ${grains.join(' or ')}`,
    { unit: 'mm³', source: 'papers on the physical properties of rice and pea seeds' },
  );
}
