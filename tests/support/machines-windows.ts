// Finished machines, told as Windows prints them: a JSON file a class, one object without brackets.
import type { MadeMachine } from './machines';

const codes = (text: string): number[] => [...Array.from(text, (letter) => letter.charCodeAt(0)), 0, 0];

/** Device and function of `00:01.0`, two digits each. */
const hex = (port: string): string => `${port.slice(3, 5)}0${port.slice(6)}`.toUpperCase();

/** The outputs by file name. */
export function windowsOutputsOf(machine: MadeMachine): Record<string, string> {
  const { board, firmware, processor, modules, drives, cards = [], displays = [] } = machine;
  const classes: Record<string, readonly object[]> = {
    Win32_BaseBoard: [{ Manufacturer: 'Norrvik', Product: board }],
    Win32_BIOS: [{ SMBIOSBIOSVersion: firmware, ReleaseDate: '/Date(1768176000000)/' }],
    Win32_Processor: [{ Name: `${processor} @ 3.30GHz   ` }],
    Win32_PhysicalMemory: modules.map(({ channel, dimm, sizeGB, part, speed, running }) => ({
      BankLabel: `P0 CHANNEL ${channel}`,
      DeviceLocator: `DIMM ${dimm}`,
      Capacity: sizeGB * 1024 ** 3,
      Manufacturer: 'Lumen',
      PartNumber: `${part}   `,
      Speed: speed,
      ConfiguredClockSpeed: running,
    })),
    Win32_PhysicalMemoryArray: [{ MemoryErrorCorrection: 3 }],
    Win32_VideoController: cards.map(({ id, port }) => {
      const [vendor = '', device = ''] = id.toUpperCase().split(':');
      return {
        Name: 'Orrery Graphics',
        PNPDeviceID: `PCI\\VEN_${vendor}&DEV_${device}&SUBSYS_00011A2B&REV_C1`,
        // What hangs on no port is built in.
        LocationPath: port === '' ? 'PCIROOT(0)#PCI(0200)' : `PCIROOT(0)#PCI(${hex(port)})#PCI(0000)`,
      };
    }),
    MSFT_PhysicalDisk: drives.map(({ name, model, bytes, failed }, i) => ({
      DeviceId: String(i),
      Model: model,
      FriendlyName: model,
      Size: bytes,
      BusType: name.startsWith('nvme') ? 17 : 11,
      HealthStatus: failed ? 2 : 0,
    })),
    MSFT_StorageReliabilityCounter: drives.map(({ hours = 2, used = 0 }, i) => ({
      DeviceId: String(i),
      PowerOnHours: hours,
      Wear: used,
      Temperature: 38,
    })),
    WmiMonitorID: displays.map(({ name, code = '3204' }) => ({
      UserFriendlyName: codes(name),
      ManufacturerName: codes('PHR'),
      ProductCodeID: codes(code),
    })),
  };
  return Object.fromEntries(
    Object.entries(classes)
      .filter(([, objects]) => objects.length > 0)
      .map(([name, objects]) => [
        `${name}.json`,
        `\uFEFF${JSON.stringify(objects.length === 1 ? objects[0] : objects, undefined, 4).replaceAll('\n', '\r\n')}\r\n`,
      ]),
  );
}
