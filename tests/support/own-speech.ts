/** The browser's own speech, as a test hears it: what is said waits until the test lets it end. */
import { vi } from 'vitest';

interface Saying {
  readonly text: string;
  readonly lang: string;
  readonly voice: SpeechSynthesisVoice | null;
  readonly end: () => void;
  readonly fail: (error: SpeechSynthesisErrorCode) => void;
}

export const voice = (lang: string, more: Partial<SpeechSynthesisVoice> = {}): SpeechSynthesisVoice => ({
  lang,
  name: lang,
  voiceURI: lang,
  default: false,
  localService: true,
  ...more,
});

/** Stands in for the browser's until `vi.unstubAllGlobals`. */
export const ownSpeech = () => {
  const waiting: Saying[] = [];
  const heard: string[] = [];
  class Utterance {
    lang = '';
    voice: SpeechSynthesisVoice | null = null;
    onend: (() => void) | null = null;
    onerror: ((event: { error: SpeechSynthesisErrorCode }) => void) | null = null;
    constructor(readonly text: string) {}
  }
  const speechSynthesis = {
    speak: (one: Utterance) => {
      heard.push(one.text);
      waiting.push({
        text: one.text,
        lang: one.lang,
        voice: one.voice,
        end: () => one.onend?.(),
        fail: (error) => one.onerror?.({ error }),
      });
    },
    cancel: () => {
      for (const one of waiting.splice(0)) one.fail('canceled');
    },
  };
  vi.stubGlobal('window', { speechSynthesis });
  vi.stubGlobal('SpeechSynthesisUtterance', Utterance);
  return { waiting, heard };
};
