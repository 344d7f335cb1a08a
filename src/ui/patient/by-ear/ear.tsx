'use client';
/** Says what is due on a page of the session, in a voice of the phone or, where it has none, in notes. */
import { useEffect, useLayoutEffect, useRef } from 'react';
import { say } from '../aloud/say.ts';
import { useVoice } from '../aloud/voice.ts';
import { playNotes } from '../phone/notes.ts';
import type { SessionDraft } from '../session/draft.ts';
import { type Cue, dueCue, earCues, earKey } from './ear-cues.ts';

export interface EarProps {
  readonly draft: SessionDraft;
  readonly clock: () => number;
}

const lookMs = 200;

const note = ({ isOfSet }: Cue) => playNotes(isOfSet ? [660] : [660, 880]);

const sound = (cue: Cue, voice: SpeechSynthesisVoice | null): (() => void) => {
  if (voice) return say([cue.text], voice, (end) => end === 'unheard' && note(cue));
  note(cue);
  return () => undefined;
};

/** One large press ends a set: its button takes a third of the window (session.css). */
const useLargePress = () =>
  useLayoutEffect(() => {
    document.documentElement.dataset.byEar = 'yes';
    return () => {
      delete document.documentElement.dataset.byEar;
    };
  }, []);

export const Ear = ({ draft, clock }: EarProps) => {
  const voice = useVoice();
  const latest = useRef({ draft, voice });
  latest.current = { draft, voice };
  useLargePress();
  useEffect(() => {
    let key = '';
    let cues: readonly Cue[] = [];
    let heardTo = 0;
    let stop = () => {};
    const look = () => {
      const now = clock();
      const next = earKey(latest.current.draft, now);
      if (next !== key) {
        stop();
        key = next;
        cues = earCues(latest.current.draft, now);
        heardTo = now - 1;
      }
      const due = dueCue(cues, heardTo, now);
      heardTo = now;
      if (due) stop = sound(due, latest.current.voice);
    };
    const endCount = ({ target }: Event) => {
      if (target instanceof Element && target.closest('.exercise-page button'))
        cues = cues.filter(({ isOfSet }) => !isOfSet);
    };
    const timer = setInterval(look, lookMs);
    document.addEventListener('click', endCount);
    return () => {
      clearInterval(timer);
      document.removeEventListener('click', endCount);
      stop();
    };
  }, [clock]);
  return null;
};
