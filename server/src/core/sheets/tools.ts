// Facts of a part from what it says of itself: a display’s EDID, prints of decode-dimms and smartctl.
import { edidBytes, readEdid, type Edid } from '../machine/edid';
import type { Reading } from '../machine/reading';
import { capacityNamed, driveShape, readSmart, sataLink, type SmartDrive } from '../machine/smart';
import { isSpdPrint, readSpd, type SpdModule } from '../machine/spd';
import { formatQuantity } from '../quantity';
import type { Kind } from '../parts/kinds';
import { MEMORY_CLASS_WORDS, MEMORY_SHAPE_WORDS } from '../trade/sheet-words';
import { wordOf } from '../trade/vocabulary';
import type { Draft, Drafted } from './draft';

/** What a tool printed, as a draft; undefined for any other text. A variant is a module’s part number. */
export function draftFromTool(text: string, variant?: string): Draft | undefined {
  const edid = edidBytes(text);
  if (edid) return ofDisplay(readEdid(edid));
  if (isSpdPrint(text)) return ofModules(readSpd(text), variant);
  const drive = readSmart(text);
  return drive && ofDrive(drive);
}

const from = <T>(
  read: Reading<T> | undefined,
  path: string,
  value: (of: T) => string | readonly string[] | undefined,
): Drafted[] => {
  const written = read && value(read.value);
  if (!read || written === undefined) return [];
  return [
    { path: path.split('.'), value: written, said: read.said, ...(read.line === undefined ? {} : { line: read.line }) },
  ];
};

const draft = (
  kind: Kind,
  facts: readonly Drafted[],
  perhaps: readonly Drafted[],
  more: Partial<Draft> = {},
): Draft => ({
  kind,
  facts,
  perhaps,
  disagreeing: [],
  unread: [],
  variants: [],
  ...more,
});

/** Rates are named by the whole number that they come next to, as displays are sold; the exact one stands behind. */
const hertz = (exact: number): string =>
  Math.abs(exact - Math.round(exact)) <= 0.25 ? String(Math.round(exact)) : String(exact);

function ofDisplay({ name, maker, input, link, compression, modes, problems }: Edid): Draft {
  const texts = modes.map(({ value }) => `${value.widthPx}x${value.heightPx} @ ${hertz(value.refreshHz)} Hz`);
  const connector = input && { HDMI: 'HDMI', DisplayPort: 'DP', DVI: 'DVI', VGA: 'VGA' }[input.value];
  const facts = [
    ...from(name, 'model', (text) => text),
    ...(modes[0] ? from(modes[0], 'modes', () => [...new Set(texts)]) : []),
    ...(connector && link ? from(link, `inputs.${connector}.link`, (text) => text) : []),
    ...(connector && !link ? from(input, `inputs.${connector}`, () => '{}') : []),
    ...from(compression, 'compression', String),
  ];
  return draft(
    'display',
    facts,
    from(maker, 'maker', (letters) => letters),
    {
      unread: problems.map((text) => ({ line: 0, text })),
      ...(name ? { title: name.value } : {}),
    },
  );
}

function ofModules(modules: readonly SpdModule[], variant: string | undefined): Draft {
  const named = modules.filter(({ partNumber, device }) => [partNumber?.value, device?.value].includes(variant));
  const sound = (named.length > 0 ? named : modules).filter((module) => module.sound);
  const [first] = sound;
  const unread = modules.length > sound.length ? [{ line: 0, text: 'a module whose own check sum fails' }] : [];
  if (!first) return draft('memory', [], [], { unread });
  const isOneKind = sound.every(
    (module) =>
      module.partNumber?.value === first.partNumber?.value && module.capacityMB?.value === first.capacityMB?.value,
  );
  if (!isOneKind)
    return draft('memory', [], [], {
      unread,
      variants: sound.map(({ partNumber, device }) => partNumber?.value ?? device?.value ?? ''),
    });
  return draft(
    'memory',
    moduleFacts(first),
    [
      ...from(first.heightMm, 'height', (mm) => `${mm} mm`),
      ...from(first.standardMTs, 'rated-speed', (rate) => `${rate} MT/s`),
    ],
    { unread },
  );
}

const moduleFacts = (module: SpdModule): Drafted[] => [
  ...from(module.maker, 'maker', (text) => text),
  ...from(module.partNumber, 'model', (text) => text),
  ...from(module.type, 'type', (text) => (/^(?:DDR[345]|LPDDR(?:4X|5X?))$/.test(text) ? text : undefined)),
  ...from(module.moduleType, 'shape', (text) => wordOf(MEMORY_SHAPE_WORDS, text)),
  ...from(module.moduleType, 'class', (text) =>
    /^SO-DIMM$/.test(text) ? undefined : wordOf(MEMORY_CLASS_WORDS, text),
  ),
  ...from(module.ecc, 'ecc', String),
  ...from(module.capacityMB, 'capacity', (mb) => (mb % 1024 === 0 ? `${mb / 1024} GB` : undefined)),
  ...from(module.ranks, 'ranks', String),
  ...from(module.standardMTs, 'standard-speed', (rate) => `${rate} MT/s`),
];

const BUSES: Readonly<Record<string, string>> = { NVMe: 'NVMe', ATA: 'SATA' };

function ofDrive(drive: SmartDrive): Draft {
  const isDirect = drive.deviceType === undefined || !/usb/i.test(drive.deviceType.value);
  const facts = [
    ...from(drive.model, 'model', (text) => text),
    ...(isDirect ? from(drive.protocol, 'bus', (text) => BUSES[text]) : []),
    ...(isDirect ? from(drive.linkGbps, 'link', sataLink) : []),
    ...from(drive.shape, 'shape', driveShape),
    ...from(drive.capacityBytes, 'capacity', capacityNamed),
  ];
  return draft(
    'drive',
    facts,
    from(drive.warnsAtC, 'hottest', (value) => formatQuantity(value, value, 'temperature', { unit: '°C' })),
  );
}
