// All outputs of a machine distilled into what the record holds, each fact at the line that it was read from.
import { Doc } from '../parts/doc';
import type { AsBuilt } from '../manifest/as-built';
import { machineOf, type Said, type Told } from './as-built';
import { cimPrint, cimTold, type CimClass } from './cim';
import {
  boardOf,
  dmidecodeVersion,
  eccOf,
  modulesOf,
  processorMaker,
  processorSaid,
  sizeOf,
  slotRows,
  structuresOf,
  type Structure,
} from './dmidecode';
import { displaysOf } from './displays';
import { drivePaths, drivesOf, tellsOfDrive, type SmartPrint } from './drives';
import { deviceTold, linkTold, outsideDevices, placeTold, uplinkTold, type Pci } from './pci-devices';
import { disksOf, modelName, sensed } from './json-outputs';
import { devicesOf } from './lspci';
import { outputOf, type Output, type Tool } from './outputs';
import { PciTree } from './pci-tree';
import { jsonOf, type Printed, printedAt, sayer } from './said';
import { smartDrive } from './smart';
import { readSpd, type SpdModule } from './spd';

/** A machine, and the outputs that no reader knows. */
export interface Distilled {
  readonly machine: AsBuilt;
  readonly unknown: readonly Doc[];
}

/** `taken`: the day of the reading; `folder`: what stands for the outputs where none shows something. */
export function distil(docs: readonly Doc[], folder: string, taken: string): Distilled {
  const outputs = docs.map((doc) => ({ doc, output: outputOf(doc) }));
  const known = outputs.flatMap(({ output }) => (output ? [output] : []));
  const home = new Doc(folder, 'output', '');
  const day = { text: taken, doc: home, span: { start: 0, end: 0 }, what: 'the day of reading' };
  return {
    machine: machineOf({ ...new Distillery(known).told(), taken: day }, home),
    unknown: outputs.filter(({ doc, output }) => !output && !isBlank(doc)).map(({ doc }) => doc),
  };
}

/** What a tool prints that has nothing to say; the last is the list of a machine that has no drive. */
const isBlank = ({ text }: Doc): boolean => ['', '{}', '[]', 'total0'].includes(text.slice(0, 100).replace(/\s/g, ''));

class Distillery {
  constructor(private readonly outputs: readonly Output[]) {}

  private docs(tool: Tool | CimClass, underLoad = false): readonly Doc[] {
    return this.outputs.filter((one) => one.tool === tool && one.underLoad === underLoad).map(({ doc }) => doc);
  }

  told(): Told {
    const windows = cimTold((name) => {
      const [doc] = this.docs(name);
      return doc && cimPrint(doc);
    });
    const structures = this.docs('dmidecode').flatMap((doc) => structuresOf(doc));
    const pci = this.pci(structures);
    return merged(
      {
        from: this.from(),
        board: boardOf(structures),
        processor: {
          maker: processorMaker(structures),
          reports: this.docs('lscpu').flatMap((doc) => modelName(doc) ?? [])[0] ?? processorSaid(structures),
        },
        'memory-ecc': eccOf(structures),
        memory: structures.length > 0 ? modulesOf(structures) : this.modulesBySpd(),
        devices: pci && outsideDevices(pci).map((device) => deviceTold(pci, device)),
        drives: this.drives(pci),
        uplink: pci && uplinkTold(pci),
        displays: displaysOf(this.docs('EDID')),
        ...this.sensed(),
      },
      windows,
    );
  }

  /** Without the firmware’s tables the modules’ own data tell what they are, and not where they sit or how they run. */
  private modulesBySpd(): readonly Told[] | undefined {
    const docs = this.docs('decode-dimms');
    const modules = docs.flatMap((doc) => readSpd(doc.text).flatMap((one) => (one.sound ? [spdTold(doc, one)] : [])));
    return modules.length > 0 ? modules : undefined;
  }

  private pci(structures: readonly Structure[]): Pci | undefined {
    const idle = this.docs('lspci').flatMap((doc) => devicesOf(doc));
    const load = this.docs('lspci', true).flatMap((doc) => devicesOf(doc));
    if (idle.length + load.length === 0) return undefined;
    // What was read under load says all that the idle reading does, and how fast links run as well.
    const loaded = load.length > 0;
    return { tree: new PciTree(loaded ? load : idle), rows: slotRows(structures), read: loaded ? 'load' : 'idle' };
  }

  private drives(pci: Pci | undefined): readonly Told[] | undefined {
    const smart = printsOf(this.docs('smartctl'));
    const disks = this.docs('lsblk').flatMap((doc) => disksOf(doc));
    const paths = this.docs('paths').flatMap((doc) => drivePaths(doc));
    const found = drivesOf({ smart, disks, paths, devices: pci?.tree.devices ?? [] });
    if (found.length === 0 && this.docs('lsblk').length === 0) return undefined;
    return found.map(({ told, device }) =>
      pci && device ? { ...told, ...placeTold(pci, device), ...linkTold(pci, device) } : told,
    );
  }

  private sensed(): Told {
    const load = this.docs('sensors', true);
    const idle = this.docs('sensors');
    const read = load.length > 0 ? sensed(load, 'load') : idle.length > 0 ? sensed(idle, 'idle') : undefined;
    return read ? { temperatures: read.temperatures, fans: read.fans } : {};
  }

  /** The outputs, each once, as its first line bears witness. */
  private from(): readonly Said[] {
    const seen = new Map<string, Said>();
    for (const { tool, doc, underLoad } of this.outputs) {
      if (tool === 'smartctl' && !printsOf([doc]).some(tellsOfDrive)) continue;
      const name = witnessOf(tool, underLoad);
      const version = versionOf(tool, doc);
      const text = version === undefined ? name : `${name} ${version}`;
      if (name !== '' && !seen.has(name))
        seen.set(name, { text, doc, span: doc.lines.lineSpan(0), what: 'the output' });
    }
    return [...seen.values()].sort((a, b) => (a.text < b.text ? -1 : 1));
  }
}

const printsOf = (docs: readonly Doc[]): readonly SmartPrint[] =>
  docs.flatMap((doc) => {
    const drive = smartDrive(jsonOf(doc), doc.lines);
    return drive ? [{ doc, drive }] : [];
  });

function spdTold(doc: Doc, { partNumber, capacityMB, standardMTs }: SpdModule): Told {
  const said = sayer(doc);
  return {
    reports: said(partNumber, 'decode-dimms, Part Number', (text) => text),
    capacity: said(capacityMB, 'decode-dimms, Size', (size) => sizeOf(`${size} MB`)),
    standard: said(standardMTs, 'decode-dimms, Maximum module speed', (rate) => `${rate} MT/s`),
  };
}

function witnessOf(tool: Tool | CimClass, underLoad: boolean): string {
  if (tool === 'paths') return '';
  if (/^(?:Win32|MSFT|Wmi)/.test(tool)) return 'CIM';
  return underLoad && (tool === 'lspci' || tool === 'sensors') ? `${tool} under load` : tool;
}

function versionOf(tool: string, doc: Doc): string | undefined {
  if (tool === 'dmidecode') return dmidecodeVersion(doc.text);
  if (tool !== 'smartctl') return undefined;
  const part = (at: number): Printed | undefined => printedAt(doc, jsonOf(doc), 'smartctl', 'version', at);
  return part(0) && part(1) && `${part(0)!.text}.${part(1)!.text}`;
}

/** The first says what the second does not. */
function merged(first: Told, second: Told): Told {
  const all: Record<string, Told[string]> = { ...second };
  for (const [key, value] of Object.entries(first)) {
    const other = second[key];
    if (value === undefined) continue;
    all[key] = isGroup(value) && other !== undefined && isGroup(other) ? merged(value, other) : value;
  }
  return all;
}

const isGroup = (value: NonNullable<Told[string]>): value is Told => !Array.isArray(value) && !('span' in value);
