// What Windows prints of its CIM classes as JSON: `Get-CimInstance CLASS | ConvertTo-Json`, a file a class.
import type { Doc } from '../parts/doc';
import { dayAt } from '../text';
import type { MapNode } from '../yaml';
import { decimalSize } from './json-outputs';
import { coded, itemsOf, jsonOf, mapsOf, type Printed, printedAt, said, saidAs, wholeNumber } from './said';
import { eachInItsSlot, makerOf, sizeOf, slotOf, twoControllers } from './dmidecode';
import type { Said, Told } from './as-built';
import { below } from './reading';

export const cimClasses = [
  'Win32_BaseBoard',
  'Win32_BIOS',
  'Win32_Processor',
  'Win32_PhysicalMemory',
  'Win32_PhysicalMemoryArray',
  'Win32_VideoController',
  'MSFT_PhysicalDisk',
  'MSFT_StorageReliabilityCounter',
  'Win32_DiskDrive',
  'WmiMonitorID',
] as const;
export type CimClass = (typeof cimClasses)[number];

/** Which class a file holds, by its name; the classes of memory have a name’s beginning in common. */
export const cimClassOf = (name: string): CimClass | undefined =>
  cimClasses.find((one) => name.slice(name.lastIndexOf('/') + 1).toLowerCase() === `${one.toLowerCase()}.json`);

/** The objects of a class; one object stands without brackets. */
export interface CimPrint {
  readonly doc: Doc;
  readonly objects: readonly MapNode[];
}

export const cimPrint = (doc: Doc): CimPrint => ({ doc, objects: mapsOf(jsonOf(doc)) });

type Of = (name: CimClass) => CimPrint | undefined;

const value = (print: CimPrint | undefined, key: string, at = 0): Printed | undefined =>
  print && printedAt(print.doc, print.objects[at], key);

export function cimTold(of: Of): Told {
  const bios = of('Win32_BIOS');
  const counters = of('MSFT_StorageReliabilityCounter');
  return {
    board: {
      maker: said(value(of('Win32_BaseBoard'), 'Manufacturer'), 'Win32_BaseBoard, Manufacturer', makerOf),
      reports: said(value(of('Win32_BaseBoard'), 'Product'), 'Win32_BaseBoard, Product'),
      firmware: said(value(bios, 'SMBIOSBIOSVersion'), 'Win32_BIOS, SMBIOSBIOSVersion'),
      dated: said(value(bios, 'ReleaseDate'), 'Win32_BIOS, ReleaseDate', dayOf),
    },
    processor: { reports: said(value(of('Win32_Processor'), 'Name'), 'Win32_Processor, Name') },
    'memory-ecc': eccOf(of('Win32_PhysicalMemoryArray')),
    memory: modulesOf(of('Win32_PhysicalMemory')),
    devices: videoOf(of('Win32_VideoController')),
    drives: disksOf(of('MSFT_PhysicalDisk'), of('Win32_DiskDrive'), counters),
    temperatures: counters && driveTemperatures(counters, of('MSFT_PhysicalDisk')),
    displays: monitorsOf(of('WmiMonitorID')),
  };
}

/** `/Date(1768176000000)/`, `20260112000000.000000+000`, or a day as it is written today. */
function dayOf(text: string): string | undefined {
  const ms = /^\/Date\((\d{1,14})(?:[+-]\d{4})?\)\/$/.exec(text)?.[1];
  if (ms !== undefined) return dayAt(new Date(Number(ms)));
  const [, year, month, day] = /^(\d{4})-?(\d{2})-?(\d{2})(?:T|\d{6}\.)/.exec(text) ?? [];
  return day === undefined ? undefined : `${year}-${month}-${day}`;
}

/** 3 none, 5 and 6 correct. Source: DMTF CIM schema, CIM_Memory and Win32_PhysicalMemoryArray. */
function eccOf(print: CimPrint | undefined): Said | undefined {
  return said(value(print, 'MemoryErrorCorrection'), 'Win32_PhysicalMemoryArray, MemoryErrorCorrection', (text) =>
    text === '3' ? 'false' : text === '5' || text === '6' ? 'true' : undefined,
  );
}

function modulesOf(print: CimPrint | undefined): readonly Told[] | undefined {
  const channels = twoControllers((print?.objects ?? []).map((_, i) => value(print, 'DeviceLocator', i)?.text ?? ''));
  const told = print?.objects.map((_, i) => {
    const own = (key: string, put?: (text: string) => string | undefined): Said | undefined =>
      said(value(print, key, i), `Win32_PhysicalMemory, ${key}`, put);
    const locator = value(print, 'DeviceLocator', i);
    const bank = value(print, 'BankLabel', i);
    const slot = locator && slotOf(locator.text, bank?.text ?? '', channels);
    const rate = (text: string): string | undefined => (/^[1-9]\d{2,4}$/.test(text) ? `${text} MT/s` : undefined);
    return {
      slot: locator && slot !== undefined ? saidAs(locator, slot, 'Win32_PhysicalMemory, DeviceLocator') : undefined,
      locator: own('DeviceLocator'),
      maker: own('Manufacturer', makerOf),
      reports: own('PartNumber'),
      capacity: own('Capacity', (text) =>
        /^\d{7,15}$/.test(text) ? sizeOf(`${Number(text) / 1024 ** 2} MB`) : undefined,
      ),
      standard: own('Speed', rate),
      running: own('ConfiguredClockSpeed', rate),
    };
  });
  return told && eachInItsSlot(told);
}

function videoOf(print: CimPrint | undefined): readonly Told[] | undefined {
  return print?.objects.flatMap((_, i) => {
    const path = value(print, 'PNPDeviceID', i);
    const [, vendor, device] = /^PCI\\VEN_([0-9A-F]{4})&DEV_([0-9A-F]{4})/i.exec(path?.text ?? '') ?? [];
    if (!path || vendor === undefined || device === undefined) return [];
    return [
      {
        id: saidAs(path, `${vendor}:${device}`.toLowerCase(), 'Win32_VideoController, PNPDeviceID'),
        class: saidAs(path, '0300', 'Win32_VideoController'),
        port: said(value(print, 'LocationPath', i), 'Win32_VideoController, LocationPath', portOf),
        reports: said(value(print, 'Name', i), 'Win32_VideoController, Name'),
      },
    ];
  });
}

/**
 * The port on the first bus that a card hangs on: device and function, two hexadecimal digits each. What sits on that
 * bus itself is built in. Source: Microsoft, DEVPKEY_Device_LocationPaths.
 */
function portOf(path: string): string | undefined {
  const [, device, part] = /^PCIROOT\(0\)#PCI\(([01][0-9A-F])0([0-7])\)#PCI\(0000\)$/i.exec(path) ?? [];
  return device && `00:${device.toLowerCase()}.${part}`;
}

/** Source: Microsoft, MSFT_PhysicalDisk: BusType, HealthStatus. */
const BUS_TYPES: Readonly<Record<string, string>> = { 7: 'USB', 10: 'SAS', 11: 'SATA', 17: 'NVMe' };

/** Disks over a network, in a file or made of others are no drives of the machine. Source: the same, BusType. */
const ELSEWHERE = /^(?:9|14|15|16|iSCSI|Virtual|File Backed Virtual|Storage Spaces)$/i;

function disksOf(
  disks: CimPrint | undefined,
  drives: CimPrint | undefined,
  counters: CimPrint | undefined,
): readonly Told[] | undefined {
  if (disks)
    return [...disks.objects.keys()]
      .filter((i) => !ELSEWHERE.test(value(disks, 'BusType', i)?.text ?? ''))
      .map((i) => ({
        reports:
          said(value(disks, 'Model', i), 'MSFT_PhysicalDisk, Model') ??
          said(value(disks, 'FriendlyName', i), 'MSFT_PhysicalDisk, FriendlyName'),
        capacity: said(value(disks, 'Size', i), 'MSFT_PhysicalDisk, Size', bytes),
        bus: said(value(disks, 'BusType', i), 'MSFT_PhysicalDisk, BusType', (text) => BUS_TYPES[text] ?? word(text)),
        // A warning is no failure, and no pass either.
        health: coded(value(disks, 'HealthStatus', i), 'MSFT_PhysicalDisk, HealthStatus', (text) =>
          /^(?:0|Healthy)$/i.test(text) ? 'passed' : /^(?:2|Unhealthy)$/i.test(text) ? 'failed' : undefined,
        ),
        ...countersTold(counters, disks, i),
      }));
  // The interface says SCSI of NVMe drives, and the size is rounded down to whole cylinders.
  return drives?.objects.map((_, i) => ({
    reports: said(value(drives, 'Model', i), 'Win32_DiskDrive, Model'),
    capacity: said(value(drives, 'Size', i), 'Win32_DiskDrive, Size', bytes),
  }));
}

const COUNTER = 'MSFT_StorageReliabilityCounter';
const wholeUpTo =
  (most: number, unit: string) =>
  (text: string): string | undefined =>
    /^\d{1,7}$/.test(text) && Number(text) <= most ? `${text} ${unit}` : undefined;

/** Where the one object of a print stands whose number is the same; where two bear it, neither is meant. */
function sameDevice(print: CimPrint, id: Printed | undefined): number | undefined {
  if (!id || !/^\d{1,4}$/.test(id.text)) return undefined;
  const same = print.objects.flatMap((_, i) => (value(print, 'DeviceId', i)?.text === id.text ? [i] : []));
  return same.length === 1 ? same[0] : undefined;
}

/**
 * A drive that keeps no such count reports 0, which therefore says nothing: common practice. Hours are counted in
 * sixteen bits, so that the last count may stand for any more. Source: Microsoft, MSFT_StorageReliabilityCounter.
 */
function countersTold(counters: CimPrint | undefined, disks: CimPrint, at: number): Told {
  const id = value(disks, 'DeviceId', at);
  const i = counters && sameDevice(disks, id) === at ? sameDevice(counters, id) : undefined;
  if (i === undefined) return {};
  return {
    hours: said(value(counters, 'PowerOnHours', i), `${COUNTER}, PowerOnHours`, wholeUpTo(65_534, 'h')),
    worn: said(value(counters, 'Wear', i), `${COUNTER}, Wear`, wholeUpTo(255, '%')),
  };
}

/** Each drive’s own, under its model’s name where one drive alone bears the counter’s number. */
function driveTemperatures(counters: CimPrint, disks: CimPrint | undefined): readonly Told[] | undefined {
  const all = counters.objects.flatMap((_, i) => {
    const temperature = said(value(counters, 'Temperature', i), `${COUNTER}, Temperature`, wholeUpTo(150, '°C'));
    const id = value(counters, 'DeviceId', i);
    const at = disks && sameDevice(disks, id);
    const name =
      disks && at !== undefined ? (value(disks, 'Model', at) ?? value(disks, 'FriendlyName', at)) : undefined;
    if (!temperature || !name) return [];
    return [
      {
        sensor: saidAs(name, name.text.trim(), 'MSFT_PhysicalDisk, Model'),
        temperature,
        of: saidAs(temperature, 'drive', COUNTER),
      },
    ];
  });
  return all.length > 0 ? all : undefined;
}

const word = (text: string): string | undefined => (/^(?:NVMe|SATA|SAS|USB)$/.test(text) ? text : undefined);
const bytes = (text: string): string | undefined => (/^\d{9,15}$/.test(text) ? decimalSize(Number(text)) : undefined);

/** Names stand as lists of letters’ codes, filled up with zeros. */
function monitorsOf(print: CimPrint | undefined): readonly Told[] | undefined {
  return print?.objects.map((one) => {
    const maker = lettersAt(print, one, 'ManufacturerName');
    const code = lettersAt(print, one, 'ProductCodeID');
    return {
      reports: said(lettersAt(print, one, 'UserFriendlyName'), 'WmiMonitorID, UserFriendlyName'),
      id: maker && code ? said({ ...maker, text: maker.text + code.text }, 'WmiMonitorID, ProductCodeID') : undefined,
    };
  });
}

function lettersAt(print: CimPrint, one: MapNode, key: string): Printed | undefined {
  const node = below(one, key);
  const codes = itemsOf(node).map((item) => (item.type === 'scalar' ? (wholeNumber(item.text) ?? 127) : 127));
  if (!node || codes.some((code) => code >= 127)) return undefined;
  const text = String.fromCharCode(...codes.filter((code) => code >= 32)).trim();
  return text === '' ? undefined : { text, doc: print.doc, span: node.span };
}
