/** Says sentences one after the other with the browser's own speech. */

/** `unheard`: the browser could not. `stopped`: something else was said in its place. */
export type SayingEnd = 'said' | 'stopped' | 'unheard';

/** What was being said stops. `onEnd` hears once how it ended; not after the stop that is handed back. */
export const say = (
  sentences: readonly string[],
  voice: SpeechSynthesisVoice,
  onEnd: (end: SayingEnd) => void,
): (() => void) => {
  const { speechSynthesis } = window;
  let isOver = false;
  const end = (how: SayingEnd) => {
    if (isOver) return;
    isOver = true;
    onEnd(how);
  };
  speechSynthesis.cancel();
  // One by one, for a long text is broken off by some browsers; held here, or they are forgotten half said.
  const sayings = sentences.map((text) => new SpeechSynthesisUtterance(text));
  for (const saying of sayings) {
    saying.voice = voice;
    saying.lang = voice.lang;
    saying.onerror = ({ error }) =>
      end(error === 'interrupted' || error === 'canceled' ? 'stopped' : 'unheard');
    if (saying === sayings.at(-1)) saying.onend = () => end('said');
    speechSynthesis.speak(saying);
  }
  if (sayings.length === 0) end('said');
  return () => {
    if (isOver) return;
    isOver = true;
    speechSynthesis.cancel();
  };
};
