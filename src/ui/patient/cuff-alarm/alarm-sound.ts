/**
 * A sound file as long as the time with a cuff, silent up to its alarm: a phone that locks its screen stops the
 * page's clock, and some go on playing a file. Made here, so that it needs no signal.
 */

/** Samples a second, one byte each; in such files 128 is silence. */
const rate = 8000;
const still = 128;

const headBytes = 44;

/** For a minute: three short notes, then a pause. */
const alarmSeconds = 60;
const note = { pitch: 880, seconds: 0.2, everySeconds: 0.3, times: 3, roundSeconds: 1.5, strength: 100 };

const head = (samples: number): Uint8Array<ArrayBuffer> => {
  const bytes = new DataView(new ArrayBuffer(headBytes));
  const text = (at: number, word: string) => {
    for (const [place, letter] of [...word].entries()) bytes.setUint8(at + place, letter.charCodeAt(0));
  };
  const number32 = (at: number, value: number) => bytes.setUint32(at, value, true);
  const number16 = (at: number, value: number) => bytes.setUint16(at, value, true);
  text(0, 'RIFF');
  number32(4, headBytes - 8 + samples);
  text(8, 'WAVEfmt ');
  // 16 bytes that say: plain samples, one channel, so many a second, so many bytes a second, 1 byte, 8 bits.
  number32(16, 16);
  number16(20, 1);
  number16(22, 1);
  number32(24, rate);
  number32(28, rate);
  number16(32, 1);
  number16(34, 8);
  text(36, 'data');
  number32(40, samples);
  return new Uint8Array(bytes.buffer);
};

const isSounding = (second: number): boolean => {
  const inRound = second % note.roundSeconds;
  return inRound < note.everySeconds * note.times && inRound % note.everySeconds < note.seconds;
};

const alarm = (seconds: number): Uint8Array<ArrayBuffer> =>
  Uint8Array.from({ length: seconds * rate }, (_, sample) =>
    isSounding(sample / rate)
      ? still + Math.round(note.strength * Math.sin((2 * Math.PI * note.pitch * sample) / rate))
      : still,
  );

/** Silent samples: part of one is left off, so that the alarm is never late. */
const silentSamples = (seconds: number): number => Math.max(0, Math.floor(seconds * rate));

/** The file in parts; the silence is one second, named as often as it is needed. */
export const alarmFile = (
  silentSeconds: number,
  soundingSeconds = alarmSeconds,
): readonly Uint8Array<ArrayBuffer>[] => {
  const silent = silentSamples(silentSeconds);
  const second = new Uint8Array(rate).fill(still);
  return [
    head(silent + soundingSeconds * rate),
    ...Array.from({ length: Math.floor(silent / rate) }, () => second),
    new Uint8Array(silent % rate).fill(still),
    alarm(soundingSeconds),
  ];
};
