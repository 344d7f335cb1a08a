/** Whether the alarm runs, what is told of it before the cuff goes on, and that its end is never late. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { speak } from '#ui/language/speak.ts';
import { setLanguage } from '#ui/language/words.ts';
import { type AlarmState, AlarmTold } from '#ui/patient/cuff-alarm/alarm-told.tsx';
import {
  hearAlarm,
  isAlarmRunning,
  ringNow,
  startAlarm,
  stopAlarm,
  tryAlarm,
} from '#ui/patient/cuff-alarm/cuff-alarm.ts';
import { alarmFor } from '#ui/patient/cuff-alarm/use-cuff-alarm.ts';
import '#ui/patient/asked-words.ts';
import '#ui/patient/words.ts';
import { begin, onlyCuff } from '../session-play.ts';

/** A browser's player, as far as it is used. */
class Player {
  static refuses = false;
  static readonly played: Player[] = [];
  src = '';
  paused = true;
  ended = false;
  currentTime = 0;
  bytes = 0;
  play(): Promise<void> {
    Player.played.push(this);
    this.currentTime = 0;
    this.ended = false;
    this.paused = Player.refuses;
    return Player.refuses ? Promise.reject(new DOMException('', 'NotAllowedError')) : Promise.resolve();
  }
  pause() {
    this.paused = true;
  }
}

const made: number[] = [];

beforeEach(() => {
  Player.refuses = false;
  made.splice(0);
  vi.stubGlobal('Audio', Player);
  vi.spyOn(URL, 'createObjectURL').mockImplementation((file) => {
    made.push((file as Blob).size);
    return `blob:${made.length}`;
  });
  vi.spyOn(URL, 'revokeObjectURL').mockImplementation(() => undefined);
});
afterEach(() => {
  stopAlarm();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  setLanguage();
});

const playerNow = () => Player.played.at(-1)!;
/** 8000 bytes a second after a head of 44, and a minute of alarm. */
const bytesFor = (seconds: number) => 44 + (seconds + 60) * 8000;

describe('the alarm', () => {
  it('is played from the moment the cuff is on, with so much silence as time is left', async () => {
    expect(await startAlarm(480)).toBe(true);
    expect(made).toEqual([bytesFor(480)]);
    expect(isAlarmRunning()).toBe(true);
  });

  it('counts what the cuff was on before it was let down', () => {
    vi.stubGlobal('document', { cookie: '' });
    const [item] = begin(onlyCuff).items;
    alarmFor({ ...item!, restrictions: [{ from: 0, to: 100_000 }] }, 500_000);
    expect(made).toEqual([bytesFor(380)]);
  });

  it('is not played by a phone that was told to show the end only', () => {
    vi.stubGlobal('document', { cookie: 'loadgate-sound=none' });
    alarmFor(begin(onlyCuff).items[0]!, 0);
    expect(made).toEqual([]);
  });

  it('stops with the cuff off', async () => {
    await startAlarm(480);
    stopAlarm();
    expect(isAlarmRunning()).toBe(false);
  });

  it('is known not to run where the browser refuses it, or has no player', async () => {
    Player.refuses = true;
    expect(await startAlarm(480)).toBe(false);
    expect(await tryAlarm()).toBe(false);
    vi.stubGlobal('Audio', undefined);
    expect(await tryAlarm()).toBe(false);
  });

  it('is moved on where the page’s clock is there first, and never back', async () => {
    await startAlarm(480);
    playerNow().currentTime = 479;
    ringNow();
    expect(playerNow().currentTime).toBe(480);
    playerNow().currentTime = 485;
    ringNow();
    expect(playerNow().currentTime).toBe(485);
  });

  it('that runs is not broken off by being tried', async () => {
    await startAlarm(480);
    expect(await tryAlarm()).toBe(true);
    expect(made).toHaveLength(1);
  });

  it('is heard for three seconds on a press, without silence before it', async () => {
    expect(await hearAlarm()).toBe(true);
    expect(made).toEqual([44 + 3 * 8000]);
  });
});

describe('before the cuff goes on', () => {
  const told = (state: AlarmState) =>
    renderToStaticMarkup(<AlarmTold state={state} seconds={480} />).replace(/<[^>]*>/g, ' ');

  it('nothing is said before the phone has tried', () => {
    expect(told('trying')).toBe('');
  });

  it('a phone that plays says so, and asks for a timer where its screen is locked', () => {
    expect(told('can')).toContain('When the time is up this phone plays an alarm');
    expect(told('can')).toContain('With the screen locked, set a kitchen timer too.');
  });

  it('a phone that cannot says so and asks for a kitchen timer, set to the longest time', () => {
    expect(told('cannot')).toMatch(
      /First set a kitchen timer to 8\s+minutes.*This phone can’t play an alarm/s,
    );
  });

  it('a phone told to be silent asks for the timer too, with another reason', () => {
    expect(told('silent')).toMatch(/kitchen timer to 8\s+minutes.*You chose that this phone makes no sound/s);
    expect(told('silent')).not.toContain('can’t play');
  });

  it('is told in German', async () => {
    await speak('de');
    expect(told('cannot')).toMatch(/zuerst eine Küchenuhr auf 8\s+Minuten.*kann keinen Alarm spielen/s);
    expect(told('can')).toContain('spielt dieses Telefon einen Alarm');
  });
});
