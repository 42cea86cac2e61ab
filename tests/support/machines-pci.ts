// PCI devices as `lspci -vvnn` prints them: each on a port of its own, and a chipset that several share.
import { secrets, type MadeMachine } from './machines';

interface Node {
  readonly address: string;
  readonly lines: readonly string[];
}

const express = (kind: string, able: readonly [string, number], link: readonly [string, number]): string[] => [
  `\tCapabilities: [58] Express (v2) ${kind}, MSI 00`,
  '\t\tDevCap:\tMaxPayload 512 bytes, PhantFunc 0',
  `\t\tLnkCap:\tPort #0, Speed ${able[0]}GT/s, Width x${able[1]}, ASPM L1, Exit Latency L1 <64us`,
  '\t\tLnkCtl:\tASPM Disabled; RCB 64 bytes, LnkDisable- CommClk+',
  `\t\tLnkSta:\tSpeed ${link[0]}GT/s, Width x${link[1]}`,
  '\t\t\tTrErr- Train- SlotClk+ DLActive+ BWMgmt+ ABWMgmt+',
  `\t\tLnkCtl2: Target Link Speed: ${able[0]}GT/s, EnterCompliance- SpeedDis-`,
];

/** Each device hangs on a port of its own, which is able to do what the device is. */
export function lspci({ drives, cards = [], uplink }: MadeMachine): string {
  const nodes: Node[] = [
    { address: '00:00.0', lines: ['00:00.0 Host bridge [0600]: Calder Root Complex [1f0c:14d8]'] },
    { address: '00:1f.3', lines: ['00:1f.3 Audio device [0403]: Calder Sound [1f0c:7a50]'] },
  ];
  let bus = 1;
  const hang = (port: string, head: string, able: readonly [string, number], link: readonly [string, number]): void => {
    const number = (bus++).toString(16).padStart(2, '0');
    nodes.push({
      address: port,
      lines: [
        `${port} PCI bridge [0604]: Calder Root Port [1f0c:7a38] (rev 11) (prog-if 00 [Normal decode])`,
        `\tBus: primary=00, secondary=${number}, subordinate=${number}, sec-latency=0`,
        ...express('Root Port (Slot+)', able, link),
        '\t\tSltSta:\tStatus: AttnBtn- PowerFlt- MRL- CmdCplt- PresDet+ Interlock-',
      ],
    });
    nodes.push({
      address: `${number}:00.0`,
      lines: [
        `${number}:00.0 ${head}`,
        ...express('Endpoint', able, link),
        '\tCapabilities: [100 v1] Advanced Error Reporting',
        `\tCapabilities: [150 v1] Device Serial Number ${secrets.mac.replaceAll(':', '-')}-00-00`,
      ],
    });
  };
  for (const drive of drives)
    if (drive.port && drive.link)
      hang(
        drive.port,
        'Non-Volatile memory controller [0108]: Lumen NVMe SSD Controller [1c5c:174a] (prog-if 02 [NVM Express])',
        drive.able ?? drive.link,
        drive.link,
      );
  for (const { port, id, classCode, words, able, link } of cards)
    hang(port, `${words} [${classCode}]: Orrery Device [${id}] (rev c1)`, able, link);
  if (uplink) nodes.push(...chipset(uplink));
  return `${nodes
    .sort((a, b) => (a.address < b.address ? -1 : 1))
    .map(({ lines }) => lines.join('\n'))
    .join('\n\n')}\n`;
}

const bridge = (address: string, name: string, [first, last]: readonly [string, string]): string[] => [
  `${address} PCI bridge [0604]: Calder ${name} [1f0c:43f4] (prog-if 00 [Normal decode])`,
  `\tBus: primary=${address.slice(0, 2)}, secondary=${first}, subordinate=${last}, sec-latency=0`,
];

/** A switch on a port of the processor, with the board’s own controllers behind it. */
function chipset({ port, able, link }: NonNullable<MadeMachine['uplink']>): Node[] {
  const inside = ['16', 4] as const;
  const at = (address: string, lines: readonly string[]): Node => ({ address, lines });
  return [
    at(port, [...bridge(port, 'GPP Bridge', ['20', '23']), ...express('Root Port (Slot+)', able, link)]),
    at('20:00.0', [...bridge('20:00.0', 'Chipset', ['21', '23']), ...express('Upstream Port', able, link)]),
    at('21:00.0', [
      ...bridge('21:00.0', 'Chipset', ['22', '22']),
      ...express('Downstream Port (Slot+)', inside, inside),
    ]),
    at('21:0c.0', [
      ...bridge('21:0c.0', 'Chipset', ['23', '23']),
      ...express('Downstream Port (Slot-)', inside, inside),
    ]),
    at('22:00.0', [
      '22:00.0 SATA controller [0106]: Calder Ports [1f0c:43f6]',
      ...express('Legacy Endpoint', inside, inside),
    ]),
    at('23:00.0', [
      '23:00.0 USB controller [0c03]: Calder Ports [1f0c:43f7]',
      ...express('Legacy Endpoint', inside, inside),
    ]),
  ];
}
