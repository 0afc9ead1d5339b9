import { describe, expect, it } from 'vitest';
import type { CaptureSettings } from '../../../../src/capture/soundSource.ts';
import type { GainCheckRecord } from '../../../../src/notebook/experiment.ts';
import { captureTrust, doubtsOf } from '../../../../src/session/hearing/captureTrust.ts';
import { trustWords } from '../../../../src/words/captureTrust.ts';
import type { ListeningWarning } from '../../../../src/session/hearing/listeningTypes.ts';

const RAW: CaptureSettings = {
  deviceLabel: 'Built-in',
  channelCount: 1,
  echoCancellation: 'off',
  noiseSuppression: 'off',
  autoGainControl: 'off',
};
const check = (change: Partial<GainCheckRecord> = {}): GainCheckRecord => ({
  checkedAt: '2026-03-02T09:00:00.000Z',
  verdict: 'steady',
  departureDb: 0.3,
  limitDb: 0.6,
  device: 'Built-in',
  ...change,
});
const warned = (code: ListeningWarning['code']): ListeningWarning[] => [
  { code, timeS: null } as ListeningWarning,
];

describe('captureTrust', () => {
  it('trusts what nothing processes, and what says that all is off', () => {
    expect(captureTrust(null, [], null).kind).toBe('trusted');
    expect(captureTrust(RAW, [], null).kind).toBe('trusted');
  });

  it.each(['echoCancellation', 'noiseSuppression', 'autoGainControl'] as const)(
    'doubts the level while %s is on, whatever a check said, and names it with a way out',
    (key) => {
      const trust = captureTrust({ ...RAW, [key]: 'on' }, [], check());
      expect(trust).toMatchObject({ kind: 'doubtful', gainCheckHelps: false });
      expect(doubtsOf(trust)).toEqual(['processing-on']);
      expect(trustWords(trust)).toMatch(/gain|suppression|cancellation/);
      expect(trustWords(trust)).toMatch(/marked all the same/);
      expect(trustWords(trust)).toMatch(/another microphone or another browser/);
    },
  );

  it('asks for the gain check where the browser does not say, until it is passed', () => {
    const unknown: CaptureSettings = { ...RAW, autoGainControl: 'unknown' };
    expect(captureTrust(unknown, [], null)).toMatchObject({ kind: 'unproven', gainCheckHelps: true });
    expect(doubtsOf(captureTrust(unknown, [], null))).toEqual([]);
    expect(captureTrust(unknown, [], check()).kind).toBe('trusted');
  });

  it('doubts the level when the gain pumps, until the gain check is passed', () => {
    const trust = captureTrust(RAW, warned('gain-pumping'), null);
    expect(trust).toMatchObject({ kind: 'doubtful', gainCheckHelps: true });
    expect(doubtsOf(trust)).toEqual(['sounds-processed']);
    const settled = captureTrust(RAW, warned('gain-pumping'), check());
    expect(settled.kind).toBe('trusted');
    expect(doubtsOf(settled)).toEqual([]);
  });

  it.each(['high-band-missing', 'narrow-band', 'clipping', 'hum', 'offset', 'gap', 'floor-fell'] as const)(
    'has no doubt about the level for %s',
    (code) => {
      expect(captureTrust(RAW, warned(code), null).kind).toBe('trusted');
    },
  );

  it('doubts the level after a failed check, of that microphone alone', () => {
    const failed = check({ verdict: 'rewritten', departureDb: 5 });
    expect(captureTrust(RAW, [], failed).kind).toBe('doubtful');
    expect(doubtsOf(captureTrust(RAW, [], failed))).toEqual(['gain-check-failed']);
    expect(captureTrust({ ...RAW, deviceLabel: 'Another' }, [], failed).kind).toBe('trusted');
    const unknown: CaptureSettings = { ...RAW, deviceLabel: 'Another', noiseSuppression: 'unknown' };
    expect(captureTrust(unknown, [], check()).kind).toBe('unproven');
  });
});
