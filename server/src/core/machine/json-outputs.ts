// The JSON that `lscpu -J`, `lsblk -J -O` and `sensors -j` print. Serial numbers and world-wide names are not read.
import type { Doc } from '../parts/doc';
import type { MapNode, Node } from '../yaml';
import { jsonOf, mapsOf, type Printed, printedAt, said, saidAs } from './said';
import type { Said, Told } from './as-built';
import { below } from './reading';

/** The processor’s own name; newer prints nest the fields. */
export function modelName(doc: Doc): Said | undefined {
  const waiting = [...mapsOf(below(jsonOf(doc), 'lscpu'))];
  for (let one = waiting.shift(); one; one = waiting.shift()) {
    if (printedAt(doc, one, 'field')?.text === 'Model name:') return said(printedAt(doc, one, 'data'), 'Model name');
    waiting.push(...mapsOf(one.get('children')?.value));
  }
  return undefined;
}

/** One disk as the system lists it. */
export interface Disk {
  /** `sda`, `nvme0n1`. */
  readonly name: string;
  readonly maker?: Said;
  readonly model?: Said;
  readonly capacity?: Said;
  readonly bus?: Said;
}

const BUSES: Readonly<Record<string, string>> = { nvme: 'NVMe', sata: 'SATA', usb: 'USB', sas: 'SAS' };

/** Drives by the kernel’s names. Source: Linux kernel, admin-guide/devices; others are made of drives, or of memory. */
const DRIVE = /^(?:sd[a-z]{1,3}|hd[a-z]|vd[a-z]{1,3}|xvd[a-z]{1,3}|nvme\d{1,3}n\d{1,3}|mmcblk\d{1,3})$/;

/** Disks that are fixed: what can be taken out is left out. */
export function disksOf(doc: Doc): readonly Disk[] {
  return mapsOf(below(jsonOf(doc), 'blockdevices')).flatMap((one) => {
    const name = printedAt(doc, one, 'name');
    const isDisk = printedAt(doc, one, 'type')?.text === 'disk';
    const isFixed = !/^(?:true|1)$/.test(printedAt(doc, one, 'rm')?.text ?? '');
    const plain = name?.text.replace(/^\/dev\//, '') ?? '';
    if (!isDisk || !isFixed || !DRIVE.test(plain)) return [];
    // ATA drives and modules have no field for it: the kernel fills in how they are spoken to.
    const maker = said(printedAt(doc, one, 'vendor'), 'lsblk, vendor', (text) =>
      /^(?:ATA|NVMe)$/i.test(text) ? undefined : text,
    );
    const model = said(printedAt(doc, one, 'model'), 'lsblk, model');
    const capacity = said(printedAt(doc, one, 'size'), 'lsblk, size', bytesOf);
    const spoken = said(printedAt(doc, one, 'tran'), 'lsblk, tran', (text) => BUSES[text]);
    const bus = spoken && spoken.text !== 'SAS' ? spoken : (ataBehindSas(doc, one) ?? spoken);
    return [
      {
        name: plain,
        ...(maker ? { maker } : {}),
        ...(model ? { model } : {}),
        ...(capacity ? { capacity } : {}),
        ...(bus ? { bus } : {}),
      },
    ];
  });
}

/** A SATA drive behind a SAS controller: the translation names its maker `ATA`. Source: INCITS SAT-4, INQUIRY data. */
const ataBehindSas = (doc: Doc, disk: MapNode): Said | undefined =>
  said(printedAt(doc, disk, 'vendor'), 'lsblk, vendor', (text) => (/^ATA$/i.test(text) ? 'SATA' : undefined));

/** Without `-b` sizes are rounded to one decimal, in units of 1024: a range then. */
function bytesOf(text: string): string | undefined {
  if (/^\d{4,18}$/.test(text)) return decimalSize(Number(text));
  const [, number = '', prefix = ''] = /^(\d{1,4}(?:[.,]\d)?) ?([MGTP])$/.exec(text) ?? [];
  if (prefix === '') return undefined;
  const size = Number(number.replace(',', '.'));
  const half = /[.,]/.test(number) ? 0.05 : 0.5;
  const end = (value: number): string => String(Number(value.toFixed(2)));
  return size > half ? `${end(size - half)} to ${end(size + half)} ${prefix}iB` : undefined;
}

/** Bytes in the unit that makers count drives in; undefined of less than any disk ever held. */
export function decimalSize(bytes: number): string | undefined {
  if (!(bytes >= 1e5)) return undefined;
  const [unit, factor] = bytes >= 1e12 ? ['TB', 1e12] : ['GB', 1e9];
  return `${Number((bytes / factor).toPrecision(6))} ${unit}`;
}

export interface Sensed {
  readonly temperatures: readonly Told[];
  readonly fans: readonly Told[];
}

/** Chips by the parts they sit in. Source: Linux kernel, Documentation/hwmon. */
const CHIPS: readonly (readonly [RegExp, string])[] = [
  [/^(?:k10temp|k8temp|coretemp|zenpower|cpu_thermal)-/, 'processor'],
  [/^(?:nvme|drivetemp)-/, 'drive'],
  [/^(?:amdgpu|nouveau|radeon|xe|i915)-/, 'graphics'],
];

/** The highest temperatures and the lowest fan speeds of one or more prints, each sensor once. */
export function sensed(docs: readonly Doc[], read: 'idle' | 'load'): Sensed {
  const hottest = new Map<string, Reading>();
  const slowest = new Map<string, Reading>();
  for (const doc of docs)
    for (const one of inputsOf(doc)) {
      const by = one.isFan ? slowest : hottest;
      const before = by.get(one.sensor);
      if (!before || (one.isFan ? one.value < before.value : one.value > before.value)) by.set(one.sensor, one);
    }
  const when = ({ printed }: Reading): Said => saidAs(printed, read, 'the file’s name');
  return {
    temperatures: [...hottest.values()].map((one) => ({
      sensor: saidAs(one.printed, one.sensor, 'sensors, name'),
      temperature: saidAs(one.printed, `${one.value} °C`, `sensors, ${one.sensor}`),
      of: one.of === undefined ? undefined : saidAs(one.printed, one.of, 'sensors, chip'),
      read: when(one),
    })),
    fans: [...slowest.values()].map((one) => ({
      sensor: saidAs(one.printed, one.sensor, 'sensors, name'),
      speed: saidAs(one.printed, `${one.value} rpm`, `sensors, ${one.sensor}`),
      read: when(one),
    })),
  };
}

interface Reading {
  readonly sensor: string;
  readonly isFan: boolean;
  readonly value: number;
  readonly of?: string;
  readonly printed: Printed;
}

function* inputsOf(doc: Doc): Iterable<Reading> {
  const root = jsonOf(doc);
  for (const chip of entriesOf(root))
    for (const feature of entriesOf(chip.value))
      for (const { key, value } of entriesOf(feature.value)) {
        const [, kind] = /^(temp|fan)\d{1,2}_input$/.exec(key) ?? [];
        const printed = value.type === 'scalar' ? printedAt(doc, value) : undefined;
        const number = /^-?\d{1,6}(?:\.\d{1,6})?$/.test(printed?.text ?? '') ? Number(printed!.text) : undefined;
        if (kind === undefined || !printed || number === undefined || !isPlausible(kind, number)) continue;
        const of = CHIPS.find(([pattern]) => pattern.test(chip.key))?.[1];
        const sensor = `${chip.key.split('-', 1)[0]!} ${feature.key}`;
        yield {
          sensor,
          isFan: kind === 'fan',
          value: Number(number.toFixed(1)),
          printed,
          ...(of === undefined ? {} : { of }),
        };
      }
}

/** Inputs that nothing is connected to read far below freezing, or the end of their scale. Source: common practice. */
const isPlausible = (kind: string, value: number): boolean =>
  kind === 'fan' ? value >= 0 && value < 20_000 : value > 0 && value < 120;

const entriesOf = (node: Node | undefined): MapNode['entries'] => (node?.type === 'map' ? node.entries : []);
