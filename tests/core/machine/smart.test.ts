// What drives say of themselves, as smartctl prints it in JSON.
import { describe, expect, it } from 'vitest';
import { readSmart } from '../../../server/src/core/machine/smart';

const disk = `{
  "json_format_version": [1, 0],
  "smartctl": { "version": [7, 4], "exit_status": 0 },
  "device": { "name": "/dev/sda", "info_name": "/dev/sda [SAT]", "type": "sat", "protocol": "ATA" },
  "model_family": "Lumen Vault",
  "model_name": "LUMEN VAULT-12T",
  "serial_number": "SECRET4711",
  "wwn": { "naa": 5, "oui": 3152, "id": 12345678 },
  "firmware_version": "0A07",
  "user_capacity": { "blocks": 23437770752, "bytes": 12000138625024 },
  "rotation_rate": 7200,
  "form_factor": { "ata_value": 2, "name": "3.5 inches" },
  "interface_speed": {
    "max": { "sata_value": 14, "string": "6.0 Gb/s" },
    "current": { "sata_value": 2, "string": "3.0 Gb/s" }
  },
  "smart_status": { "passed": true },
  "power_on_time": { "hours": 9829 },
  "temperature": { "current": 36 }
}
`;
const module = `{"smartctl":{"version":[7,4]},"device":{"name":"/dev/nvme0","type":"nvme","protocol":"NVMe"},
"model_name":"LUMEN RAPID-2T","nvme_total_capacity":2000398934016,"smart_status":{"passed":true},
"nvme_composite_temperature_threshold":{"warning":82},
"nvme_smart_health_information_log":{"critical_warning":0,"percentage_used":3,"media_errors":0},
"power_on_time":{"hours":12}}`;

const values = (text: string): Record<string, unknown> | undefined => {
  const drive = readSmart(text);
  return drive && Object.fromEntries(Object.entries(drive).map(([key, read]) => [key, read.value]));
};

describe('a print of smartctl', () => {
  it('gives a disk’s facts with their lines, and no serial number', () => {
    expect(values(disk)).toEqual({
      model: 'LUMEN VAULT-12T',
      family: 'Lumen Vault',
      protocol: 'ATA',
      deviceType: 'sat',
      device: '/dev/sda',
      capacityBytes: 12_000_138_625_024,
      shape: '3.5 inches',
      linkGbps: 6,
      linkNowGbps: 3,
      hours: 9829,
      passed: true,
    });
    expect(readSmart(disk)!.linkNowGbps).toEqual({
      value: 3,
      line: 15,
      said: 'interface_speed.current.string: 3.0 Gb/s',
    });
    expect(JSON.stringify(readSmart(disk))).not.toMatch(/SECRET|12345678/);
  });

  it('gives a module’s facts', () => {
    expect(values(module)).toMatchObject({
      protocol: 'NVMe',
      capacityBytes: 2_000_398_934_016,
      criticalWarning: 0,
      percentUsed: 3,
      warnsAtC: 82,
    });
  });
});
