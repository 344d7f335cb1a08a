'use client';
/**
 * A voice of this phone in the language of the page. Only voices that speak on the phone itself are taken: others
 * send what they say to whoever made the browser, and what a patient's pages say is a patient's own.
 */
import { useEffect, useState } from 'react';
import { spokenLanguage } from '#ui/language/words.ts';

const hasSpeech = (): boolean => typeof window !== 'undefined' && 'speechSynthesis' in window;

/** "de", "de-AT" and "de_DE" are German; the voice the phone prefers goes first. */
export const voiceFor = (
  tag: string,
  voices: readonly SpeechSynthesisVoice[],
): SpeechSynthesisVoice | null => {
  const ours = voices.filter(
    ({ lang, localService }) => localService && lang.split(/[-_]/)[0]?.toLowerCase() === tag,
  );
  return ours.find((voice) => voice.default) ?? ours[0] ?? null;
};

const voiceNow = (): SpeechSynthesisVoice | null =>
  hasSpeech() ? voiceFor(spokenLanguage().tag, window.speechSynthesis.getVoices()) : null;

/** Null while there is none; many browsers tell their voices a moment after the page is there. */
export const useVoice = (): SpeechSynthesisVoice | null => {
  const [voice, setVoice] = useState<SpeechSynthesisVoice | null>(null);
  useEffect(() => {
    const look = () => setVoice(voiceNow());
    look();
    if (!hasSpeech()) return;
    const { speechSynthesis } = window;
    // Some browsers have the voices and no event that tells of them.
    speechSynthesis.addEventListener?.('voiceschanged', look);
    return () => speechSynthesis.removeEventListener?.('voiceschanged', look);
  }, []);
  return voice;
};
