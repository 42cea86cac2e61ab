// What Windows prints of its CIM classes as JSON.

/** What Windows prints of a desk, a file a class; one object stands without brackets. */
export const windowsOutputs: Readonly<Record<string, string>> = {
  'Win32_BaseBoard.json': '{ "Manufacturer": "Norrvik", "Product": "B7 FORGE" }\n',
  'Win32_BIOS.json': '{ "SMBIOSBIOSVersion": "1.20", "ReleaseDate": "\\/Date(1768176000000)\\/" }\n',
  'Win32_Processor.json': '{ "Name": "Calder C7 840 ", "NumberOfCores": 8 }\n',
  'Win32_PhysicalMemory.json':
    '\r\n{ "BankLabel": "P0 CHANNEL A", "DeviceLocator": "DIMM 1", "Capacity": 34359738368, "PartNumber": "D5-6000 ", "Speed": 4800, "ConfiguredClockSpeed": 6000 }\r\n',
  'Win32_PhysicalMemoryArray.json': '{ "MemoryErrorCorrection": 3, "MemoryDevices": 4 }\n',
  'Win32_VideoController.json':
    '[\n  { "Name": "Orrery G70", "PNPDeviceID": "PCI\\\\VEN_1A2B\\u0026DEV_7480\\u0026SUBSYS_00000000", "LocationPath": "PCIROOT(0)#PCI(0100)#PCI(0000)", "AdapterRAM": 4293918720 }\n]\n',
  'MSFT_StorageReliabilityCounter.json': '[{ "DeviceId": "1", "PowerOnHours": 9829, "Wear": 3, "Temperature": 41 }]\n',
  'MSFT_PhysicalDisk.json':
    '[{ "DeviceId": "1", "Model": "Rapid 2T", "Size": 2000398934016, "BusType": 17, "HealthStatus": 0 }]\n',
  'Win32_DiskDrive.json': '[\n  { "Model": "Rapid 2T", "Size": 2000396321280, "InterfaceType": "SCSI" }\n]\n',
  'WmiMonitorID.json':
    '{ "UserFriendlyName": [80, 51, 50, 0], "ManufacturerName": [80, 72, 82, 0], "ProductCodeID": [49, 50, 51, 52] }\n',
};
