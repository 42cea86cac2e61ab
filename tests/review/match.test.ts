// Findings before and after a change: the same ones are told by what they are about.
import { describe, expect, it } from 'vitest';
import { matchFindings, type KnownFinding } from '../../server/src/review/match';

const known = (id: string, subject: string, fingerprint = subject, text = ''): KnownFinding => ({
  id,
  subject,
  fingerprint,
  text,
});

describe('matching', () => {
  it('goes by check and subject, whatever is said', () => {
    const before = known('cooler-too-tall', 'parts.cooler', 'a', 'by 5 mm');
    const after = known('cooler-too-tall', 'parts.cooler', 'a', 'by 9 mm');
    expect(matchFindings([before], [after])).toEqual({ pairs: [[before, after]], gone: [], come: [] });
  });

  it('finds a drive that is called otherwise by its fingerprint, and one in another slot by its name', () => {
    const called = matchFindings([known('x', 'parts.drives.left', 'a')], [known('x', 'parts.drives.first', 'a')]);
    const seated = matchFindings([known('x', 'parts.drives.left', 'a')], [known('x', 'parts.drives.left', 'b')]);
    expect([called.pairs.length, seated.pairs.length]).toEqual([1, 1]);
  });

  it('follows a fan that another was put before', () => {
    const moved = known('x', 'parts.fans[1]', 'FAN_2');
    const { pairs, come } = matchFindings(
      [known('x', 'parts.fans[0]', 'FAN_2')],
      [known('x', 'parts.fans[0]', 'FAN_9'), moved],
    );
    expect([pairs[0]![1], come.length]).toEqual([moved, 1]);
  });

  it('tells each of several once', () => {
    const two = [known('x', 'steps:missing', 'a', 'one'), known('x', 'steps:missing', 'b', 'two')];
    const { pairs, gone, come } = matchFindings(two, [known('x', 'steps:missing', 'a', 'two')]);
    expect([pairs.length, gone.length, come.length]).toEqual([1, 1, 0]);
  });

  it('keeps other checks and subjects apart', () => {
    const { pairs } = matchFindings(
      [known('x', 'parts.fans[0]', 'a')],
      [known('y', 'parts.fans[0]', 'b'), known('x', 'parts.case', 'c')],
    );
    expect(pairs).toEqual([]);
  });
});
