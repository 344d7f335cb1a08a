/** Short notes, made here, so that nothing has to be loaded. A browser that wants a touch first stays silent. */

const apart = 0.25;
const long = 0.2;

export const playNotes = (pitches: readonly number[]): void => {
  const sound = new AudioContext();
  for (const [place, pitch] of pitches.entries()) {
    const note = sound.createOscillator();
    const volume = sound.createGain();
    volume.gain.value = 0.2;
    note.frequency.value = pitch;
    note.connect(volume).connect(sound.destination);
    note.start(sound.currentTime + place * apart);
    note.stop(sound.currentTime + place * apart + long);
    if (place === pitches.length - 1) note.onended = () => void sound.close();
  }
};
