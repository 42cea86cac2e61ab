// Spellings of sockets, and of processor families and models.
import { describe, expect, it } from 'vitest';
import {
  listsSocket,
  sameProcessorName,
  sameSocket,
  SOCKET_WORDS,
} from '../../../server/src/core/trade/processor-names';
import { meanings, wordOf } from '../../../server/src/core/trade/vocabulary';

describe('sockets', () => {
  it('takes spellings of one socket for one', () => {
    expect(sameSocket('LGA1851', 'Socket LGA1851')).toBe(true);
    expect(sameSocket('lga 1851', ' socket LGA1851 ')).toBe(true);
    expect(sameSocket('LGA2011', 'LGA2011-3')).toBe(false);
    expect(sameSocket('AM4', 'AM5')).toBe(false);
    expect(sameSocket('Sockets', 's')).toBe(false);
    expect(sameSocket('A (Socket 462)', 'A (462)')).toBe(false);
    expect(sameSocket('AM4', 'Super Socket AM4')).toBe(false);
  });

  it.each([
    ['LGA1700', 'LGA 1700|LGA-1700|FCLGA1700|lga1700|Socket LGA1700|Socket 1700|1700|S1700|FCLGA 1700|LGA1700 socket'],
    ['LGA1851', 'LGA 1851|LGA-1851|FCLGA1851|Socket LGA-1851|socket 1851|1851|FC-LGA1851|lga‑1851|CPU socket LGA1851'],
    ['AM5', 'Socket AM5|am5|AM-5|AM 5|SAM5|socket-AM5|AM5 socket|Socket am5|CPU Socket AM5|Socket_AM5'],
  ])('%s', (word, all) => {
    for (const one of all.split('|')) expect(wordOf(SOCKET_WORDS, one), one).toBe(word);
  });

  it.each(['AM', 'LGA', 'LGA170', 'AM6', '17000', 'LGA1700-2', 'Socket', 'socket 5', 'AM5+', 'XAM5', 'PGA1700'])(
    '%j is none of the list',
    (one) => expect(wordOf(SOCKET_WORDS, one)).toBeUndefined(),
  );

  it('compares sockets outside the list by their letters', () => {
    expect(sameSocket('Socket K9', 'k-9')).toBe(true);
    expect(sameSocket('FCLGA9999', 'LGA 9999')).toBe(true);
    expect(sameSocket('LGA9999', 'LGA9998')).toBe(false);
  });

  // Processor makers’ data sheets: the package by its contacts.
  it('knows a socket by its contacts where no other has as many', () => {
    expect(sameSocket('AM5', 'LGA 1718')).toBe(true);
    expect(sameSocket('FCLGA6096', 'Socket SP5')).toBe(true);
    expect(sameSocket('PGA1331', 'AM4')).toBe(true);
    expect(meanings(SOCKET_WORDS, 'LGA4094')).toEqual(['SP3', 'SP3r2', 'TR4', 'sTRX4', 'sWRX8']);
    expect(meanings(SOCKET_WORDS, 'LGA-4844')).toEqual(['SP6', 'sTR5']);
  });

  it('reads lines that name several', () => {
    expect(listsSocket('AM4/AM5', 'Socket AM5')).toBe(true);
    expect(listsSocket('1150/1151/1155', 'LGA1151')).toBe(true);
    expect(listsSocket('LGA115x', 'LGA1151')).toBe(true);
    expect(listsSocket('LGA 115X', 'LGA1200')).toBe(false);
    expect(listsSocket('LGA20xx', 'LGA2066')).toBe(true);
    expect(listsSocket('AMx', 'AM4')).toBe(false);
    for (const socket of ['LGA1851', 'LGA1700', 'LGA1200'])
      expect(listsSocket('LGA 1851 | 1700; 1200', socket), socket).toBe(true);
    for (const line of ['AM4 and AM5', 'AM5 und AM4', 'AM4 | AM5']) expect(listsSocket(line, 'AM5'), line).toBe(true);
    expect(listsSocket('LGA 1851 | 1700', 'LGA1366')).toBe(false);
    expect(listsSocket('AM3+', 'AM3')).toBe(false);
    // One kit for all sockets of those contacts. Source: common practice.
    expect(listsSocket('LGA4094', 'TR4')).toBe(true);
    expect(listsSocket('LGA4094', 'sTR5')).toBe(false);
  });
});

describe('families and models', () => {
  it.each([
    ['C7', 'C7 Series'],
    ['Calder C7', 'C7 Series'],
    ['Calder C7', 'CALDER C7'],
    ['Calder C7', 'calder c7 series'],
    ['Calder C7', 'C7 Processors'],
    ['Calder® C7™ Processor', 'C7'],
    ['Calder(R) C7 CPU', 'Calder C7'],
    ['C7-840', 'C7 840'],
    ['Calder C7-840', 'c7 840'],
    ['C7 Desktop Processor', 'Calder C7 family'],
  ])('%s is %s', (a, b) => {
    expect(sameProcessorName(a, b, 'Calder')).toBe(true);
    expect(sameProcessorName(b, a, 'Calder')).toBe(true);
    expect(sameProcessorName(a, b)).toBe(true);
  });

  it.each([
    ['Calder C7', 'Calder C6'],
    ['C7', 'C77'],
    ['C7 840', 'C7 84'],
    ['C7 840', 'C7 840K'],
    ['Calder C7', 'Norrvik C7'],
    ['Series', 'Processor'],
    ['', ''],
    ['C7', ''],
    ['Calder', 'C7'],
    ['C7 Pro', 'C7'],
  ])('%j is not %j', (a, b) => expect(sameProcessorName(a, b, 'Calder')).toBe(false));
});
