// What data sheets call the facts of all kinds of part but board, case and supply. Labels are compared without case,
// blanks and punctuation; what stands below a group may have the group’s own label before it, or as its heading.
// Source: common practice, counted over data sheets in English and German.
import type { Labels } from './labelled';

export const anyLabels: Labels = {
  maker: 'Brand | Brand name | Manufacturer | Maker | Vendor | Make | Marke | Hersteller',
  model:
    'Model | Model name | Product name | Product | Series model | Processor number | Modell | Modellname | ' +
    'Model number | Model no. | Model code | Modellnummer | Modell-Nr. | Produkt | Produktname | Bezeichnung | ' +
    'Artikelbezeichnung | Modellbezeichnung | Artikelname',
  mass:
    'Weight | Net weight | N.W. | Net weight (N.W.) | Mass | Product weight | Weight (net) | Unit weight | ' +
    'Gewicht | Nettogewicht | Card weight | ' +
    'Masse | Gewicht (netto) | Gewicht netto',
};

const LIGHTS =
  'ARGB | RGB | ARGB connector | RGB connector | LED connector | Lighting connector | ARGB-Anschluss | ' +
  'RGB-Anschluss | ' +
  'LED-Anschluss';

export const fanLabels: Labels = {
  size:
    'Size | Dimensions | Dimension | Frame | Frame size | Abmessungen | Maße | Größe | Baugröße | Rahmenmaße | ' +
    'Lüftergröße',
  thickness:
    'Thickness | Depth | Size | Dimensions | Dimension | Frame | Abmessungen | Maße | Größe | Baugröße | Dicke | ' +
    'Tiefe | Bauhöhe | Rahmenmaße | Lüftergröße',
  pins:
    'Connector | Connector type | Connectors | Power connector | Connection | Plug | Pins | Pin | Pin count | ' +
    'Interface | Anschluss | Anschlüsse | Anschlusstyp | Stecker | Steckertyp',
  current:
    'Rated current | Current | Input current | Max input current | Max current | Current draw | Nennstrom | ' +
    'Strom | Stromstärke | Stromaufnahme',
  'start-current': 'Starting current | Start current | Start-up current | Anlaufstrom',
  speed:
    'Speed | RPM | Rotational speed | Rotation speed | Max speed | Full speed | Motor speed | Speed (RPM) | ' +
    'Drehzahl | Umdrehungen | Nenndrehzahl | Maximaldrehzahl | Drehzahlbereich | Speed range | RPM range | ' +
    'Rotational speed range',
  airflow:
    'Airflow | Air flow | Air volume | Max airflow | Luftdurchsatz | Fördervolumen | Volumenstrom | ' +
    'Luftstrom | Luftfördermenge',
  pressure:
    'Static pressure | Air pressure | Pressure | Max pressure | Max static pressure | Max air pressure | ' +
    'Statischer Druck | Luftdruck | Stat. Druck | Druck',
  level:
    'Noise | Noise level | Acoustical noise | Acoustic noise | Sound level | Sound pressure level | ' +
    'Noise emission | Max noise level | Geräuschpegel | Geräusch | Geräuschentwicklung | Lautstärke | ' +
    'Schalldruckpegel | Schallpegel',
  'lights.voltage': LIGHTS,
  'lights.pins': LIGHTS,
  'hole-pitch':
    'Mounting hole spacing | Hole spacing | Hole pitch | Screw hole spacing | Lochabstand | Bohrungsabstand',
};

const below = (group: string, labels: Labels): Labels =>
  Object.fromEntries(Object.entries(labels).map(([path, words]) => [`${group}.${path}`, words]));

const radiatorLabels: Labels = {
  class: 'Size | Class | Format | Größe | Baugröße | Radiator',
  length: 'Dimensions | Dimension | Size | Length | Abmessungen | Maße | Länge',
  width: 'Dimensions | Dimension | Size | Width | Abmessungen | Maße | Breite',
  thickness: 'Dimensions | Dimension | Size | Thickness | Abmessungen | Maße | Dicke | Tiefe',
};

export const processorLabels: Labels = {
  ...anyLabels,
  family:
    'Processor family | Product family | CPU family | Product collection | Processor series | Product line | ' +
    'Prozessorfamilie | Produktfamilie | Produktreihe',
  socket:
    'Socket | CPU socket | Processor socket | Socket type | Sockets supported | Socket supported | Package | ' +
    'Sockel | CPU-Sockel | Prozessorsockel',
  'power.sustained':
    'TDP | Default TDP | Thermal design power | Thermal design power (TDP) | TDP (thermal design power) | ' +
    'Processor base power | Base power | TDP base | Thermische Verlustleistung | Verlustleistung | ' +
    'Verlustleistung (TDP) | TDP (Verlustleistung) | TDP (Grundleistung) | Grundleistung | Basisleistung',
  'power.peak':
    'TDP | Maximum turbo power | Max turbo power | Turbo power | PL2 | PPT | Package power tracking | ' +
    'Maximale Turboleistung | Turboleistung | Max. Turbo-Leistung',
  'power.peak-lasts': 'Tau | PL2 time | Turbo time limit',
  hottest:
    'Tjmax | Tj max | Tjunction | T junction | Junction temperature | Max temps | Max temp | Max temperature | ' +
    'Max operating temperature | Max operating temperature (Tjmax) | Max temperature (Tjmax) | ' +
    'Temperatur max. | Maximale Temperatur | Höchsttemperatur | Max. Betriebstemperatur | ' +
    'Max. Betriebstemperatur (Tjmax)',
  graphics:
    'Integrated graphics | Processor graphics | Graphics | Graphics model | Graphics models | iGPU | GPU name | ' +
    'iGPU model | Onboard graphics | Grafik | Integrierte Grafik | Grafikeinheit | iGPU-Modell | ' +
    'Grafikmodell | Prozessorgrafik',
  'memory.types':
    'Memory type | Memory types | System memory type | Memory | Memory support | Memory controller | ' +
    'Supported memory | Unterstützter Speicher | System memory specification | Memory specification | ' +
    'RAM type | RAM | Speichertyp | ' +
    'Speichertypen | Speichercontroller | Arbeitsspeicher | Speicherkompatibilität | Speicherunterstützung | ' +
    'Speicher',
  'memory.fastest':
    'Supported memory | Unterstützter Speicher | Speicherunterstützung | Memory speed | ' +
    'Max memory speed | Memory frequency | ' +
    'System memory specification | Memory specification | ' +
    'Memory types | Memory type | Memory | Memory support | Memory controller | RAM speed | Speichertakt | ' +
    'Max. Speichertakt | Speichergeschwindigkeit | Speicherkompatibilität | Speichertypen | Speichercontroller',
  'memory.channels':
    'Memory | Arbeitsspeicher | Supported memory | Unterstützter Speicher | Memory controller | ' +
    'Speicherunterstützung | Speichercontroller | Memory channels | ' +
    'Number of memory channels | ' +
    'Max # of memory channels | Max no. of memory channels | Channels | Memory channel | Speicherkanäle | ' +
    'Anzahl Speicherkanäle | Anzahl der Speicherkanäle | Kanäle',
  'memory.most':
    'Memory | Arbeitsspeicher | Supported memory | Unterstützter Speicher | Memory controller | ' +
    'Speicherunterstützung | Speichercontroller | Max memory size | ' +
    'Max memory | Max memory capacity | ' +
    'Max memory support | Memory size | Maximum memory | Max memory size (dependent on memory type) | ' +
    'Maximaler Speicher | Max. Speicher | Max. Speicherausbau | Maximaler Speicherausbau | ' +
    'Max. Speichergröße | Max. Speicherkapazität',
  'memory.ecc':
    'ECC | ECC memory | ECC support | ECC memory supported | ECC memory support | ECC-Unterstützung | ' +
    'ECC-Speicher | ECC-Speicher unterstützt | Memory | Memory support | Arbeitsspeicher',
  lanes:
    'PCIe | PCI Express | PCIe lanes | PCI Express lanes | Max # of PCI Express lanes | Max # of PCIe lanes | ' +
    'Number of PCIe lanes | Usable PCIe lanes | Native PCIe lanes | Total PCIe lanes | ' +
    'CPU PCIe lanes | PCIe-Lanes | Anzahl PCIe-Lanes | ' +
    'Anzahl der PCIe-Lanes',
  generation:
    'PCIe version | PCI Express version | PCIe revision | PCI Express revision | PCIe generation | PCIe | ' +
    'PCI Express | PCIe lanes | PCIe-Lanes | PCIe-Version | PCI-Express-Version | PCIe-Generation',
  'chipset-link': 'Chipset interface | Chipset link | Chipset connection | Chipsatz-Interface | Chipsatzanbindung',
};

export const coolerLabels: Labels = {
  ...anyLabels,
  sockets:
    'Socket | Sockets | CPU socket | CPU sockets | Socket support | Socket compatibility | ' +
    'Compatible sockets | Supported sockets | Supported processor sockets | CPU socket support | ' +
    'CPU compatibility | CPU socket compatibility | Compatibility | Sockel | Sockelkompatibilität | ' +
    'Kompatible Sockel | Unterstützte Sockel | CPU-Sockel | Kompatibilität',
  height:
    'Height | Overall height | Total height | Cooler height | Height with fan | Height (with fan) | ' +
    'Height incl. fan | Product height | Dimensions | Dimension | Product dimensions | Overall dimensions | ' +
    'Dimensions with fan | Cooler dimensions | Heatsink dimensions | Höhe | Bauhöhe | Gesamthöhe | ' +
    'Höhe mit Lüfter | Höhe (mit Lüfter) | Kühlerhöhe | Abmessungen | Gesamtabmessungen | ' +
    'Abmessungen mit Lüfter | Maße',
  'rated-power':
    'TDP | TDP rating | TDP support | Max TDP | Cooling capacity | Cooling power | Cooling performance | ' +
    'Heat dissipation | TDP (thermal design power) | Thermal design power | Rated TDP | Kühlleistung | ' +
    'Max. Kühlleistung | TDP (Thermal Design Power) | TDP-Empfehlung',
  base:
    'Base | Base material | Block material | Base plate | Base plate material | Cold plate | ' +
    'Cold plate material | Coldplate | Contact surface | Contact material | Material base | Bodenplatte | ' +
    'Kontaktfläche | Material Bodenplatte | Material der Bodenplatte | Basismaterial | Boden',
  paste: 'Thermal paste | Thermal compound | Thermal grease | Thermal interface | Wärmeleitpaste',
  'memory-room':
    'RAM clearance | Memory clearance | RAM height | Max RAM height | Max memory height | ' +
    'RAM height clearance | RAM-Höhe | Max. RAM-Höhe | Max. Speicherhöhe | RAM-Freiraum',
  mass:
    `${anyLabels.mass} | Total weight | Overall weight | Weight with fan | Weight (with fan) | Weight incl. fan | ` +
    'Gesamtgewicht | Gewicht mit Lüfter | Gewicht (mit Lüfter) | Gewicht inkl. Lüfter',
  fans: 'Fan | Fans | Lüfter | Ventilator',
  'fans.count':
    'Fans | Lüfter | Number of fans | Quantity | Included fans | Number | Pre-installed fans | Fan quantity | ' +
    'Anzahl | ' +
    'Anzahl Lüfter | Anzahl der Lüfter | Lüfteranzahl | Mitgelieferte Lüfter',
  ...below('fans', {
    ...fanLabels,
    size: `Fan | Fans | Lüfter | ${fanLabels.size}`,
    thickness: `Fan | Fans | Lüfter | ${fanLabels.thickness}`,
  }),
  pump: 'Pump | Pumpe',
  'pump.current': 'Rated current | Current | Nennstrom | Stromaufnahme',
  'pump.pins': 'Connector | Power connector | Connector type | Anschluss',
  'pump.level': 'Noise | Noise level | Sound level | Geräuschpegel | Lautstärke | Pumpenlautstärke',
  radiator: 'Radiator',
  ...below('radiator', radiatorLabels),
  'tube-length':
    'Tube length | Tubing length | Hose length | Tube | Tubes | Schlauchlänge | Länge der Schläuche | Tubing',
};

export const memoryLabels: Labels = {
  ...anyLabels,
  type:
    'Memory type | Module | Modul | Type | Technology | RAM type | DDR generation | Memory technology | ' +
    'Memory standard | ' +
    'Standard | Generation | Module type | Speichertyp | Typ | Speichertechnologie | RAM-Typ',
  shape:
    'Form factor | Module | Modul | Module type | Module form factor | Module format | Package memory format | ' +
    'Memory type | Speichertyp | DIMM type | Type | Typ | ' +
    'Pin count | Pins | Pin | ' +
    'Number of pins | Package | Formfaktor | Modultyp | Bauform | Pinanzahl | Anzahl Pins | Modulbauform',
  class:
    'Module type | Module | Modul | DIMM type | Class | Features | Besonderheiten | Buffering | ' +
    'Registered/Unbuffered | Buffered/Registered | Type | ' +
    'Form factor | Memory type | Modultyp | Bauform | Typ | Pufferung | Formfaktor',
  ecc:
    'ECC | Features | Besonderheiten | Error checking | Data integrity check | ' +
    'Datenintegritätsprüfung | Error correction | ECC support | ' +
    'ECC type | Fehlerkorrektur | ECC-Unterstützung | ' +
    'Fehlerkorrektur (ECC)',
  capacity:
    'Capacity | Density | Memory capacity | Memory size | Size | Module capacity | Capacity per module | ' +
    'Kit capacity | ' +
    'Total capacity | Kit | Kit configuration | Kapazität | Speicherkapazität | Speichergröße | ' +
    'Modulkapazität | Gesamtkapazität | Kapazität pro Modul',
  'modules-in-kit':
    'Kit | Modules | Module | Number of modules | Modules in kit | Kit type | Module quantity | Quantity | ' +
    'Capacity | Memory capacity | Memory size | Multi-channel kit | Kit configuration | Kit capacity | ' +
    'Total capacity | ' +
    'Anzahl Module | Anzahl der Module | Module im Kit | Kapazität | Kit-Typ | Gesamtkapazität | Speichergröße',
  ranks:
    'Rank | Ranks | Features | Besonderheiten | Number of ranks | Rank configuration | Organization | ' +
    'Organisation | Module organization | ' +
    'Rank organization | Ränge | Anzahl Ranks',
  'standard-speed':
    'SPD speed | JEDEC speed | JEDEC | Default speed | SPD | Default speed (JEDEC) | Base speed | SPD-Takt | ' +
    'SPD-Geschwindigkeit | JEDEC-Takt | JEDEC-Geschwindigkeit',
  'rated-speed':
    'Speed | Memory speed | Tested speed | Frequency | Data rate | Rated speed | Transfer rate | Clock speed | ' +
    'Tested frequency | Speed rating | Takt | Speichertakt | Taktfrequenz | Geschwindigkeit | Datenrate | ' +
    'Nenntakt | Getestete Geschwindigkeit',
  voltage:
    'Voltage | Tested voltage | Operating voltage | Rated voltage | VDD | Supply voltage | Spannung | ' +
    'Betriebsspannung | Getestete Spannung | Nennspannung',
  height:
    'Height | Module height | Height with heat spreader | Heatspreader height | Dimensions | Dimension | ' +
    'Höhe | Modulhöhe | Höhe mit Kühlkörper | Abmessungen | Bauhöhe',
};

export const pasteLabels: Labels = {
  ...anyLabels,
  class: 'Base | Filler | Composition | Type | Zusammensetzung | Füllstoff | Basis | Typ',
  electrically:
    'Electrical conductivity | Electrical | Electrically conductive | Elektrische Leitfähigkeit | Elektrisch leitend',
  conductivity: 'Thermal conductivity | Conductivity | Wärmeleitfähigkeit | Thermische Leitfähigkeit',
  'tested-by': 'Test method | Measured by | Test standard | Prüfverfahren | Messverfahren',
  'bond-line': 'Bond line thickness | Bond line | Bond-line thickness (BLT) | BLT | Schichtdicke',
  volume: 'Volume | Content | Contents | Capacity | Inhalt | Volumen | Füllmenge',
};

export const cableLabels: Labels = {
  ...anyLabels,
  connector: 'Connector | Connector type | Cable type | Type | Anschluss | Kabeltyp | Steckertyp | Typ',
  length: 'Length | Cable length | Länge | Kabellänge',
  ways: 'Connectors | Anschlüsse | Connections',
  carries: 'Rated power | Power rating | Belastbarkeit',
  gauge: 'Wire | Wire gauge | AWG | Gauge | Leiterquerschnitt (AWG) | Kabelquerschnitt (AWG)',
};

const FAN_MOUNTS = 'Fans | Fan mounts | Fan support | Lüfter | Lüfterplätze';

export const radiatorPartLabels: Labels = {
  ...anyLabels,
  ...radiatorLabels,
  class: 'Class | Radiator size | Radiator | Format | Radiatorgröße',
  'fan-size': FAN_MOUNTS,
  fans: FAN_MOUNTS,
};

export const fixingLabels: Labels = {
  ...anyLabels,
  item: 'Item | Type | Product | Artikel | Typ | Bezeichnung',
  thread: 'Thread | Thread size | Thread type | Gewinde',
  length: 'Length | Shaft length | Länge',
};

export const stickLabels: Labels = {
  ...anyLabels,
  filesystem: 'File system | Filesystem | Factory format | Dateisystem | Dateisystem ab Werk',
  capacity: 'Capacity | Storage capacity | Kapazität | Speicherkapazität',
};

export const fanPartLabels: Labels = {
  ...anyLabels,
  ...Object.fromEntries(
    Object.entries(fanLabels).map(([path, words]) => {
      const alone = words.split(' | ');
      return [path, [...alone, ...alone.map((one) => `Fan ${one}`)].join(' | ')];
    }),
  ),
  speed: `${fanLabels.speed} | Fan speed | Lüfterdrehzahl`,
  'draw.peak':
    'Power consumption | Input power | Max power | Max power consumption | Rated power | Max input power | ' +
    'Power | Fan power consumption | Leistungsaufnahme | Max. Leistungsaufnahme | Nennleistung | Leistung',
};
