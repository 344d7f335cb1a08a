/** The alarm at the end of the time with a cuff, as a file the browser plays: one at a time. */
import { alarmFile } from './alarm-sound.ts';

let player: HTMLAudioElement | null = null;
let address: string | null = null;
let silentSeconds = 0;

export const stopAlarm = (): void => {
  player?.pause();
  if (address !== null) URL.revokeObjectURL(address);
  address = null;
};

export const isAlarmRunning = (): boolean => player !== null && !player.paused && !player.ended;

/** True once the browser plays it. A browser may refuse before anything was pressed, or have no player. */
const play = async (parts: readonly Uint8Array<ArrayBuffer>[]): Promise<boolean> => {
  if (typeof Audio === 'undefined') return false;
  stopAlarm();
  // Kept, for some browsers let a player go on that was once started by a press.
  player ??= new Audio();
  address = URL.createObjectURL(new Blob([...parts], { type: 'audio/wav' }));
  player.src = address;
  try {
    await player.play();
    return true;
  } catch {
    return false;
  }
};

/** Called by the press that starts the clock, since many browsers play nothing else. */
export const startAlarm = (seconds: number): Promise<boolean> => {
  silentSeconds = Math.max(0, seconds);
  return play(alarmFile(silentSeconds));
};

/** The page's clock says that the time is up: a file that lies behind it is moved on to its alarm. */
export const ringNow = (): void => {
  if (player && isAlarmRunning() && player.currentTime < silentSeconds) player.currentTime = silentSeconds;
};

/** Whether this phone plays a file at all: a second of silence. What runs already is left alone. */
export const tryAlarm = async (): Promise<boolean> => (isAlarmRunning() ? true : play(alarmFile(1, 0)));

/** To know it by ear, and how loud the phone is. */
export const hearAlarm = (): Promise<boolean> => play(alarmFile(0, 3));
