// Words that people bring along for the roles under `parts:` and for the kinds of part. Source: common practice.
import { vocabulary, type Vocabulary } from '../trade/vocabulary';
import type { RoleName } from './places';

export const ROLE_WORDS: Vocabulary<RoleName> = vocabulary('a part’s role', {
  board: ['motherboard', 'mobo', 'mainboard', 'main board', 'mother board', 'mb', 'system board', 'boards'],
  processor: ['cpu', 'processors', 'cpus', 'apu', 'chip'],
  cooler: ['heatsink', 'heat sink', 'cpu cooler', 'cpu-fan', 'cooling', 'aio', 'coolers', 'water cooler', 'hsf'],
  paste: ['thermal paste', 'thermal compound', 'thermal grease', 'tim', 'compound', 'thermal interface'],
  memory: ['ram', 'dimm', 'dimms', 'memory modules', 'modules', 'ram sticks', 'dram', 'rams'],
  drives: [
    ...['ssd', 'ssds', 'hdd', 'hdds', 'nvme', 'storage', 'disk', 'disks', 'drive', 'hard disk', 'hard drive'],
    ...['hard drives', 'm.2', 'boot drive', 'sata drives'],
  ],
  graphics: [
    ...['gpu', 'gpus', 'graphics card', 'graphics cards', 'video card', 'video', 'vga', 'graphic card', 'gfx'],
    ...['display adapter', 'graphics adapter'],
  ],
  cards: ['card', 'expansion cards', 'expansion card', 'add-in cards', 'add-in card', 'pcie cards', 'pci cards'],
  supply: ['psu', 'power supply', 'powersupply', 'power', 'power unit', 'supplies', 'power supply unit'],
  case: ['chassis', 'enclosure', 'housing', 'pc case', 'tower', 'cabinet', 'cases', 'computer case'],
  fans: ['fan', 'case fans', 'case fan', 'chassis fans', 'system fans', 'ventilation'],
  radiators: ['radiator', 'rad', 'rads'],
  displays: ['monitor', 'monitors', 'display', 'screen', 'screens', 'panel', 'tv'],
  cables: ['cable', 'leads', 'lead', 'cords', 'wires'],
  fixings: ['screws', 'screw', 'fasteners', 'fixing', 'hardware', 'standoffs'],
  sticks: ['usb stick', 'usb sticks', 'stick', 'flash drive', 'usb drive', 'thumb drive', 'pen drive'],
});
