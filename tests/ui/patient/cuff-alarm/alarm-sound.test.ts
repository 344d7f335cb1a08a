/**
 * The sound file of a cuff's alarm. RIFF WAVE: IBM and Microsoft, Multimedia Programming Interface and Data
 * Specifications 1.0 (1991), "Waveform Audio File Format"; field places from memory.
 */
import { describe, expect, it } from 'vitest';
import { alarmFile } from '#ui/patient/cuff-alarm/alarm-sound.ts';

const rate = 8000;
const whole = (...args: Parameters<typeof alarmFile>): Buffer => Buffer.concat([...alarmFile(...args)]);
const samplesOf = (file: Buffer): Buffer => file.subarray(44);
const isSilent = (samples: Buffer): boolean => samples.every((sample) => sample === 128);

describe('the sound file', () => {
  it('says what it holds: plain samples of one byte, one channel, 8000 a second, as many as follow', () => {
    const file = whole(2, 1);
    expect(file.toString('latin1', 0, 4)).toBe('RIFF');
    expect(file.readUInt32LE(4)).toBe(file.length - 8);
    expect(file.toString('latin1', 8, 16)).toBe('WAVEfmt ');
    expect([16, 24, 28, 40].map((at) => file.readUInt32LE(at))).toEqual([16, rate, rate, 3 * rate]);
    expect([20, 22, 32, 34].map((at) => file.readUInt16LE(at))).toEqual([1, 1, 1, 8]);
    expect(file.toString('latin1', 36, 40)).toBe('data');
    expect(samplesOf(file)).toHaveLength(3 * rate);
  });

  it('is silent as long as the cuff may stay on, and sounds at once after it', () => {
    const samples = samplesOf(whole(480, 60));
    expect(isSilent(samples.subarray(0, 480 * rate))).toBe(true);
    expect(isSilent(samples.subarray(480 * rate, 480 * rate + 10))).toBe(false);
  });

  it('sounds for a minute, never silent for a whole second', () => {
    const samples = samplesOf(whole(0));
    expect(samples).toHaveLength(60 * rate);
    for (let at = 0; at + rate <= samples.length; at += rate)
      expect(isSilent(samples.subarray(at, at + rate)), `second ${at / rate}`).toBe(false);
  });

  it('is never late by a part of a sample, and sounds at once where no time is left', () => {
    const silentOf = (seconds: number) => samplesOf(whole(seconds, 1)).length - rate;
    expect([12.5, 12.50005, 12.4999].map(silentOf)).toEqual([100_000, 100_000, 99_999]);
    expect([0, -3].map(silentOf)).toEqual([0, 0]);
  });
});
