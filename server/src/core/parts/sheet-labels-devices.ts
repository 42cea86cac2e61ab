// What data sheets call the facts of a drive, a card and a display. Source: as `sheet-labels.ts`.
import { anyLabels } from './sheet-labels';
import type { Labels } from './labelled';

export const driveLabels: Labels = {
  ...anyLabels,
  bus:
    'Interface | Bus | Host interface | Protocol | Bus interface | Connection | Interface type | ' +
    'Schnittstelle | Anschluss | Protokoll',
  link:
    'Interface | Bus | Host interface | Bus interface | Connection | Interface type | Link | Schnittstelle | ' +
    'Anschluss',
  shape:
    'Form factor | Format | Drive size | Size | Formfaktor | Bauform | Baugröße | Größe | Drive form factor | ' +
    'Physical form factor',
  size: 'Form factor | Format | Size | Module size | Formfaktor | Bauform | Größe | Baugröße',
  key: 'Key | M.2 key | Keying | M.2-Key | Form factor | Formfaktor | Bauform',
  thickness:
    'Thickness | Height | Dimensions | Dimension | Z-height | Drive height | Dicke | Höhe | Bauhöhe | ' +
    'Abmessungen | Product dimensions | Maße',
  capacity:
    'Capacity | Storage capacity | Formatted capacity | User capacity | Drive capacity | Kapazität | ' +
    'Speicherkapazität | Speicherplatz',
  read:
    'Sequential read | Sequential read speed | Read speed | Seq. read | Sequential read rate | Read | ' +
    'Reading speed | Sequential reads | Max sequential read | Max read speed | Read speed (sequential) | ' +
    'Lesen | Lesegeschwindigkeit | Sequenzielles Lesen | Sequentielles Lesen | Seq. Lesen | ' +
    'Lesen (sequenziell) | Lesegeschwindigkeit (sequenziell) | Lesen (sequentiell) | ' +
    'Lesegeschwindigkeit (sequentiell)',
  write:
    'Sequential write | Sequential write speed | Write speed | Seq. write | Sequential write rate | Write | ' +
    'Sequential writes | Max sequential write | Max write speed | Write speed (sequential) | Writing speed | ' +
    'Schreiben | Schreibgeschwindigkeit | Sequenzielles Schreiben | Sequentielles Schreiben | Seq. Schreiben | ' +
    'Schreiben (sequenziell) | Schreibgeschwindigkeit (sequenziell) | Schreiben (sequentiell) | ' +
    'Schreibgeschwindigkeit (sequentiell)',
  endurance:
    'TBW | Endurance | Endurance (TBW) | Endurance rating | Terabytes written | Total bytes written | ' +
    'Write endurance | Terabytes written (TBW) | Total bytes written (TBW) | Endurance (terabytes written) | ' +
    'Haltbarkeit (TBW) | Schreibvolumen | Schreibleistung (TBW) | Lebensdauer (TBW)',
  'unrecoverable-errors':
    'Non-recoverable errors per bits read | Unrecoverable read errors | ' +
    'Non-recoverable read errors per bits read | Nonrecoverable read errors per bits read | ' +
    'Unrecoverable bit error rate | UBER | Nicht behebbare Lesefehler',
  recording: 'Recording technology | Recording method | Recording | Aufzeichnungsverfahren | Aufnahmeverfahren',
  'spin-up.current':
    'Start-up current +12 V | Spin-up current (12 V) | Startup current (12 V) | Start current (12 V) | ' +
    'Anlaufstrom (12 V) | ' +
    'Start-up current (12 V, max.) | Spin-up current (12 V, max.) | Spin-up current (12 V, peak) | ' +
    'Anlaufstrom (12 V, max.) | Anlaufstrom (12 V, Spitze)',
  hottest:
    'Operating temperature | Temperature (operating) | Temperature operating | Operating temp | ' +
    'Operating temperature range | Ambient temperature | Betriebstemperatur | ' +
    'Temperatur (Betrieb) | Temperatur im Betrieb',
  highest: 'Operating altitude | Altitude (operating) | Altitude, operating | Betriebshöhe | Höhe (Betrieb)',
  'draw.typical':
    'Average power consumption | Avg. power consumption | Average operating power | Operating power (average) | ' +
    'Average active power | ' +
    'Power (active, avg.) | Power (active, average) | Power consumption (active, average) | ' +
    'Active power (average) | Power consumption (average) | Typical power consumption | Average power | ' +
    'Power consumption (typical) | Typical power | Leistungsaufnahme (typisch) | ' +
    'Durchschnittliche Leistungsaufnahme | Typische Leistungsaufnahme',
  'draw.running':
    'Read/write power | Power (read/write) | Power consumption (read/write) | Read/write | Lesen/Schreiben | ' +
    'Leistungsaufnahme (Lesen/Schreiben)',
  'draw.peak':
    'Peak power | Max power consumption | Maximum power consumption | Max power | Peak power draw | ' +
    'Spin-up power | Startup power | Power consumption (max) | Power consumption (peak) | ' +
    'Maximale Leistungsaufnahme | Max. Leistungsaufnahme | Leistungsaufnahme (max.) | ' +
    'Power consumption active (max.) | Power active (max.) | Leistungsaufnahme aktiv (max.) | ' +
    'Power consumption | Leistungsaufnahme',
};

export const cardLabels: Labels = {
  ...anyLabels,
  link:
    'Interface | Host bus type | Host bus | Bus | Bus standard | Bus standards | Bus interface | Card bus | ' +
    'Host interface | Bus type | ' +
    'PCI Express | PCIe | PCIe interface | Slot | Schnittstelle | Anschluss | Bus-Schnittstelle | Steckplatz | ' +
    'Anbindung',
  length:
    'Length | Card length | Dimensions | Dimension | Card dimensions | Card dimension | Card size | ' +
    'Product dimensions | Board length | Länge | Kartenlänge | Abmessungen | Maße | Kartenmaße',
  height: 'Card height | Height | Höhe | Kartenhöhe | Dimensions | Dimension | Card dimensions | Abmessungen | Maße',
  thickness:
    'Thickness | Card thickness | Dicke | Kartendicke | Dimensions | Card dimensions | Card dimension | ' +
    'Abmessungen | ' +
    'Maße | Kartenmaße',
  cooling: 'Cooling | Cooler | Cooling type | Thermal solution | Kühlung | Kühler | Kühlungsart',
  openings:
    'Slot width | Slot occupation | Slot | Card thickness | Slot design | Slots | Occupied slots | Slot size | ' +
    'Slots occupied | Width (slots) | ' +
    'Card width | Slot requirement | Form factor | Width | Slots belegt | Belegte Slots | Slotbreite | ' +
    'Breite | Bauform | Bauweise | Slot-Breite',
  'power.sustained':
    'TGP | TBP | TDP | TDP/TGP | TGP/TBP | Board power | Total graphics power | ' +
    'Total board power | Graphics card power | ' +
    'Power consumption | Typical board power | Total graphics power (TGP) | Total board power (TBP) | ' +
    'Typical power | Typical power consumption | Graphics power | Card power | Leistungsaufnahme | Verbrauch | ' +
    'Stromverbrauch | Power | Max power consumption | Kartenleistung | Graphics card power (W) | ' +
    'Typische Leistungsaufnahme',
  connectors:
    'Power connector | Power connectors | Supplementary power | Supplementary power connectors | ' +
    'External power | Power input | PCIe power connectors | Auxiliary power | Additional power | Power plugs | ' +
    'Stromanschluss | Stromanschlüsse | Stromversorgung | Zusätzliche Stromanschlüsse | Stromstecker',
  outputs:
    'Outputs | Output | Display outputs | Video outputs | Display connectors | Display ports | Ports | ' +
    'Connectors | I/O ports | Monitor outputs | Connectivity | Anschlüsse | Ausgänge | Videoausgänge | ' +
    'Bildschirmanschlüsse | Monitoranschlüsse | Display-Anschlüsse',
  'drive-ports': 'Ports | Internal ports | SATA ports | SAS ports | Drive ports | Number of ports | Interne Ports',
  'port-kind': 'Ports | Internal ports | Data transfer rate | Drive interface | Connectors | Anschlüsse',
  'standby-draw': 'Standby power | Auxiliary standby power',
  bracket: 'Bracket | Bracket height | Bracket type | Bracket profile | Slotblech | Slotblende | Slotblechhöhe',
  carries: 'M.2 slots | M.2 sockets | M.2 ports | M.2-Slots | M.2-Steckplätze',
};

export const displayLabels: Labels = {
  ...anyLabels,
  mass:
    `${anyLabels.mass} | Weight with stand | Weight (with stand) | Net weight (with stand) | Net weight with stand | ` +
    'Weight incl. stand | Gewicht mit Fuß | Gewicht (mit Fuß) | Gewicht mit Ständer | Gewicht mit Standfuß | ' +
    'Gewicht (mit Standfuß) | Gewicht inkl. Standfuß',
  modes:
    'Resolution | Native resolution | True resolution | Max resolution | Maximum resolution | ' +
    'Panel resolution | Modes | Display modes | Recommended resolution | Auflösung | Native Auflösung | ' +
    'Physikalische Auflösung | Max. Auflösung | Optimale Auflösung | Panel-Auflösung',
  inputs:
    'Inputs | Input | Video inputs | Display inputs | Signal input | Signal inputs | Input connectors | ' +
    'Connectors | Connections | Connectivity | Ports | Ports & connectors | Display input type | Input signal | ' +
    'Video input | I/O | Anschlüsse | Eingänge | Videoeingänge | Signaleingänge | Signaleingang',
  'draw.typical':
    'Power consumption | Power consumption (typ) | Typical power consumption | Power consumption (typical) | ' +
    'Power consumption (on) | Power consumption (on mode) | On mode | Normal operation | Power used | ' +
    'Power consumption (normal) | Power consumption (operation) | Stromverbrauch | Leistungsaufnahme | ' +
    'Leistungsaufnahme (typisch) | Stromverbrauch (typisch) | Stromverbrauch (Betrieb) | ' +
    'Leistungsaufnahme (Betrieb) | Typische Leistungsaufnahme | Typischer Stromverbrauch | ' +
    'Energieverbrauch (Betrieb)',
  'draw.peak':
    'Max power consumption | Maximum power consumption | Power consumption (max) | Max power | ' +
    'Power consumption | Stromverbrauch | Leistungsaufnahme | ' +
    'Power consumption (maximum) | Maximale Leistungsaufnahme | Max. Leistungsaufnahme | ' +
    'Leistungsaufnahme (max.) | Stromverbrauch (max.) | Max. Stromverbrauch | Maximaler Stromverbrauch',
};
