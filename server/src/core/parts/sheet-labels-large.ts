// What data sheets call the facts of a board, a case and a supply. Source: as `sheet-labels.ts`.
import { anyLabels } from './sheet-labels';
import type { Labels } from './labelled';

export const boardLabels: Labels = {
  ...anyLabels,
  size:
    'Form factor | Board size | Motherboard type | Mainboard size | Mainboard-Formfaktor | ' +
    'Motherboard form factor | Size | ' +
    'Formfaktor | Bauform | Format | Platinenformat | Mainboard-Format',
  width:
    'Form factor | Mainboard-Formfaktor | Dimensions | Dimension | Board dimensions | Formfaktor | ' +
    'Abmessungen | Board size',
  depth:
    'Form factor | Mainboard-Formfaktor | Dimensions | Dimension | Board dimensions | Formfaktor | ' +
    'Abmessungen | Board size',
  socket:
    'Socket | CPU socket | Processor socket | Socket type | CPU | Processor | CPU support | Sockel | ' +
    'CPU-Sockel | Prozessorsockel | Prozessor',
  'processor-power': 'CPU | Processor | CPU support | Prozessor',
  'firmware.update-without-processor':
    'BIOS Flashback | USB BIOS Flashback | Flash BIOS button | BIOS update without CPU | Flashback | ' +
    'Update without processor | Firmware update without CPU | Firmware update without processor | ' +
    'BIOS-Update ohne CPU | BIOS-Flashback',
  processors:
    'CPU | Processor | CPU support | CPU socket | Supported CPU | Supported CPUs | Supported processors | ' +
    'Processor support | Processors | CPU compatibility | CPU-Kompatibilität | Prozessoren | ' +
    'Unterstützte Prozessoren | Prozessorunterstützung',
  'memory.type':
    'Memory type | RAM type | Memory standard | Memory | System memory | Memory support | Supported memory | ' +
    'DRAM | DIMM slots | Speichersteckplätze | Speichertyp | Arbeitsspeicher | ' +
    'RAM-Typ | RAM | Speicher | RAM-Slots | Memory slots | ' +
    'Unterstützter Speicher',
  'memory.shape':
    'Memory slots | DIMM slots | Memory sockets | RAM slots | DIMM sockets | Memory | System memory | ' +
    'Memory form factor | Memory type | RAM-Slots | Speichersteckplätze | Speicherbänke | Arbeitsspeicher',
  'memory.module':
    'Memory | Memory type | DIMM slots | Memory slots | System memory | ' +
    'Module type | Memory module type | Memory support | DIMM type | ' +
    'Arbeitsspeicher | Modultyp | Speichertyp | Speicher | ' +
    'RAM-Slots',
  'memory.ecc':
    'ECC | ECC support | ECC memory | ECC memory support | Memory | Memory type | System memory | ' +
    'ECC-Unterstützung | ECC-Speicher | Arbeitsspeicher | Speichertyp | Speicher',
  'memory.most':
    'Max memory | Maximum memory | Max capacity | Max memory capacity | ' +
    'Maximum capacity | RAM capacity | DIMM slots | Memory slots | ' +
    'Max. capacity of system memory | Memory capacity | Memory | System memory | Max memory size | Speicher | ' +
    'Maximaler Speicher | Max. Speicher | Maximaler Arbeitsspeicher | Max. Speicherausbau | Arbeitsspeicher | ' +
    'Max. RAM | RAM max. | ' +
    'RAM-Slots | Max. capacity | Maximalausbau',
  'memory.largest-module':
    'Memory | System memory | Memory support | Arbeitsspeicher | Max memory per slot | Max capacity per slot | ' +
    'Max module size | Max. capacity per DIMM | ' +
    'Max capacity per DIMM slot | Max. Modulgröße | Max. Speicher pro Slot | ' +
    'Max capacity | Max. capacity | Maximum capacity | Max memory | Maximum memory | Memory capacity | ' +
    'Max memory capacity | Memory slots | DIMM slots | Max. Speicher | Maximaler Speicher | RAM-Slots',
  slots:
    'Expansion slots | Slots | Slot | Expansion slot | PCIe slot | PCIe | PCI Express | M.2 slot | ' +
    'PCIe slots | PCI Express slots | M.2 slots | M.2 sockets | M.2 | Storage | ' +
    'Erweiterungssteckplätze | PCIe-Slots | M.2-Slots | Steckplätze | Speicheranschlüsse',
  ports: 'SATA ports | SATA | Storage | SATA connectors | SATA-Anschlüsse | SATA-Ports | Speicheranschlüsse',
  'display-outputs':
    'Display outputs | Video outputs | Onboard graphics | Graphics | Rear I/O | Rear panel I/O | ' +
    'Back panel connectors | Back I/O ports | Rear panel | Rear I/O ports | Integrated graphics outputs | ' +
    'Video | Anschlüsse extern | Grafikanschlüsse | Externe Anschlüsse | Rückseitige Anschlüsse | Rückseite | ' +
    'Grafik | ' +
    'Graphics outputs | Graphics output',
  headers:
    'Headers | Internal connectors | Internal I/O | Internal I/O connectors | Fan headers | Fan connectors | ' +
    'Interne Anschlüsse | Interne I/O | Lüfteranschlüsse | Fan and cooling | Kühlung | ' +
    'USB intern | Internal USB | USB headers | Header Kühlung | ' +
    'Header Beleuchtung | Header USB | Front panel connectors | Front connectors | Front',
  'power-connectors':
    'Power connectors | Power connector | ATX power connector | Main power connector | CPU power connector | ' +
    'Power | Power supply connectors | Internal connectors | Internal I/O connectors | Internal I/O | ' +
    'Stromanschlüsse | Stromversorgung | Interne Anschlüsse | Stromanschluss',
};

const place = (english: string, german: string): string =>
  [
    english,
    ...['fan', 'fans', 'fan support', 'radiator', 'radiators', 'radiator support'].map((one) => `${english} ${one}`),
    german,
  ].join(' | ');

/** Where fans and radiators sit, by the names that our own files give the places. */
export const placeLabels: Labels = {
  front: `${place('Front', 'Vorne')} | Vorderseite | Vorn | Frontlüfter | Frontradiator`,
  rear: `${place('Rear', 'Hinten')} | Back | Rückseite | Heck | Hecklüfter | Heckradiator`,
  top: `${place('Top', 'Oben')} | Deckel | Oberseite | Roof | Deckellüfter`,
  bottom: `${place('Bottom', 'Unten')} | Boden | Unterseite | Floor | Bodenlüfter`,
  side: `${place('Side', 'Seitlich')} | Seite | Seitenlüfter`,
};

export const caseLabels: Labels = {
  ...anyLabels,
  'board-sizes':
    'Motherboard support | Mainboard support | Motherboard compatibility | Motherboard | Motherboards | ' +
    'Mainboard | Motherboard type | Motherboard form factor | Supported motherboards | ' +
    'Motherboard form factors | Mainboard compatibility | M/B type | M/B support | Mainboard-Kompatibilität | ' +
    'Mainboard-Formate | Mainboardformate | Mainboard-Formfaktor | Unterstützte Mainboards | Mainboard-Format',
  'cooler-height':
    'CPU cooler height | Cooler height | CPU cooler | ' +
    'CPU cooler support | CPU cooler max height | CPU cooler clearance | ' +
    'CPU cooler height limitation | Max CPU cooler height | CPU height | Max CPU height | ' +
    'CPU cooler height clearance | Maximum CPU cooler height | CPU heatsink height | CPU-Kühlerhöhe | ' +
    'Kühlerhöhe | Max. CPU-Kühlerhöhe | Max. Kühlerhöhe | CPU-Kühler | Maximale CPU-Kühlerhöhe | ' +
    'Maximale Kühlerhöhe | Prozessorkühler',
  'card-length':
    'GPU length | Max GPU dimensions | Max. Grafikkartengröße | Max GPU size | GPU size | ' +
    'Max graphics card size | VGA | GPU clearance | GPU max length | Max GPU length | VGA length | ' +
    'VGA length limitation | ' +
    'VGA support | VGA card | VGA card length | Graphics card length | Graphics card | Graphic card | ' +
    'GPU support | Max VGA length | Max graphics card length | Graphics card clearance | GPU | ' +
    'Grafikkartenlänge | Grafikkarte | Max. Grafikkartenlänge | Maximale Grafikkartenlänge | Grafikkarten',
  'card-height': 'Max GPU size | GPU size | Max graphics card size | Max GPU dimensions | Max. Grafikkartengröße',
  'card-thickness': 'Max GPU size | GPU size | Max graphics card size | Max GPU dimensions | Max. Grafikkartengröße',
  'supply-depth':
    'PSU length | PSU max length | Max PSU length | PSU length limitation | Power supply length | ' +
    'Max power supply length | PSU clearance | PSU depth | Netzteillänge | Max. Netzteillänge | ' +
    'Maximale Netzteillänge | Netzteil-Länge | Netzteiltiefe | PSU | Power supply | Power supply support | ' +
    'PSU support | Netzteil',
  'supply-forms':
    'Power supply | PSU | PSU type | Power supply type | PSU support | Power supply support | ' +
    'PSU form factor | Power supply form factor | Netzteil | Netzteil-Formfaktor | Netzteiltyp | Netzteilformat',
  openings:
    'Expansion slots | PCI slots | PCIe slots | PCI slot | Expansion slot | Slots | PCI expansion slots | ' +
    'Erweiterungsslots | Erweiterungssteckplätze | Slotblenden | PCI-Slots',
  'vertical-openings': 'Vertical expansion slots | Vertical slots | Vertical PCI slots | Vertikale Slots',
  bays:
    'Drive bays | Drives | Drive bay | Internal drive bays | Storage | Drive support | Drive bays support | ' +
    'Laufwerksschächte | Laufwerkschächte | Laufwerkseinschübe | Laufwerke | Interne Laufwerke | Einbauschächte',
  'fan-places':
    'Fan support | Fans | Fan mounts | Fan places | Cooling | Cooling system | Fan locations | Fan options | ' +
    'Cooling support | Fan | Lüfterplätze | Lüfter | Lüftermontage | Lüfterunterstützung | Kühlung | ' +
    'Lüfterpositionen',
  'fan-places.*.fitted':
    'Pre-installed fans | Included fans | Fans included | Fan installment | Fans pre-installed | ' +
    'Lüfter (vorinstalliert) | Vorinstallierte Lüfter | Mitgelieferte Lüfter | Installierte Lüfter',
  'radiator-places':
    'Radiator support | Radiators | Radiator | Liquid cooling | Radiator options | Water cooling | ' +
    'Radiator mounts | Liquid cooling support | Wasserkühlung | Radiatoren | Radiatorplätze | ' +
    'Radiator-Unterstützung | Radiatorunterstützung',
  'front-cables':
    'Front I/O | Front ports | I/O | I/O ports | I/O panel | Front panel | Front panel I/O | I/O port | ' +
    'Front I/O ports | Front connectors | Frontanschlüsse | I/O-Anschlüsse | Vordere Anschlüsse | Front-I/O | ' +
    'Anschlüsse Front',
  'glass-panel':
    'Side panel | Material | Materials | Materialien | Left side panel | Side window | Window | ' +
    'Tempered glass | Tempered glass side panel | ' +
    'Tempered glass panel | Side panels | Left panel | Glass panel | Seitenteil | Seitenfenster | ' +
    'Linkes Seitenteil | Seitenwand | Hartglas | Sichtfenster | Seitenpanel',
};

export const supplyLabels: Labels = {
  ...anyLabels,
  rating:
    'Rated power | Continuous power | Total power | Total | Output power | Wattage | Power | Output capacity | ' +
    'Max power | Maximum power | Total output power | Rated output | Total continuous power | Power output | ' +
    'Capacity | Leistung | Nennleistung | Gesamtleistung | Ausgangsleistung | Dauerleistung | Max. Leistung | ' +
    'Maximale Leistung',
  form:
    'Form factor | PSU form factor | Type | Power supply form factor | PSU type | Formfaktor | Bauform | ' +
    'Format | Typ | Netzteil-Formfaktor | Netzteiltyp',
  depth:
    'Depth | Length | Size | PSU length | Dimensions | Dimension | Product dimensions | PSU dimensions | Tiefe | ' +
    'Länge | Abmessungen | Maße | Baulänge',
  badge:
    '80 PLUS | Efficiency | Efficiency rating | Certification | 80 PLUS certification | 80 PLUS rating | ' +
    'Energy efficiency | Energy efficient | Efficiency certification | Effizienz | Zertifizierung | ' +
    '80 PLUS-Zertifizierung | Effizienzklasse | Energieeffizienz | Wirkungsgradklasse',
  standard:
    'ATX version | Standard | Compliance | ATX standard | Specification | Design guide | ATX specification | ' +
    'Intel form factor | Intel specification | Form factor | Formfaktor | Type | Typ | PSU form factor | ' +
    'ATX-Version | ATX-Standard | ATX-Spezifikation | ' +
    'ATX12V version | ATX12V-Version',
  rails: 'DC output | Output | DC outputs | Rails | Output rails | Ausgang | DC-Ausgang | Ausgänge | Spannungsschienen',
  connectors:
    'Connectors | Cables | Cables and connectors | Cable connectors | Output connectors | Plugs | ' +
    'Cable configuration | Connector | Anschlüsse | Kabel und Stecker | Stecker | Kabel & Anschlüsse | Kabel',
  modular:
    'Modular | Modularity | Cable management | Cabling | Cable type | Modular design | Cable system | ' +
    'Modular type | Kabelmanagement | Modularität | Kabeltyp | Kabelsystem',
  'inlet.lowest':
    'Input voltage | AC input | AC input voltage | Input | AC voltage | Mains voltage | Input voltage range | ' +
    'Eingangsspannung | Netzspannung | AC-Eingang | Eingang',
  'inlet.highest':
    'Input voltage | AC input | AC input voltage | Input | AC voltage | Mains voltage | Input voltage range | ' +
    'Eingangsspannung | Netzspannung | AC-Eingang | Eingang',
  'power-factor':
    'PFC | PFC (power factor correction) | Power factor correction | Power factor | PFC type | ' +
    'Leistungsfaktorkorrektur | Leistungsfaktor | ' +
    'Power factor correction (PFC)',
  efficiency: 'Efficiency | Efficiency at load | Typical efficiency | Wirkungsgrad | Effizienz',
  'hold-up': 'Hold-up time | Hold up time | Haltezeit | Überbrückungszeit',
};
