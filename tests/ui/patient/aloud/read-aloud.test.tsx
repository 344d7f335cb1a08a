/** Reading a page aloud: what is read of it, in which voice, and that it stops. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { treeOfMarkup } from '#tests/support/markup-tree.ts';
import { ownSpeech, voice } from '#tests/support/own-speech.ts';
import { speak } from '#ui/language/speak.ts';
import { setLanguage } from '#ui/language/words.ts';
import { pageSentences } from '#ui/patient/aloud/page-sentences.ts';
import { type SayingEnd, say } from '#ui/patient/aloud/say.ts';
import { voiceFor } from '#ui/patient/aloud/voice.ts';
import { ScoreQuestion } from '#ui/patient/questions/score-question.tsx';
import { YesNoQuestion } from '#ui/patient/questions/yes-no-question.tsx';
import { ItemPage } from '#ui/patient/session/pages/item-page.tsx';
import { RestPage } from '#ui/patient/session/pages/rest-page.tsx';
import '#ui/patient/asked-words.ts';
import '#ui/patient/words.ts';
import { begin } from '../session-play.ts';
import { exercise, today, weightDose } from '../views.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  setLanguage();
});

const readOf = (page: React.ReactNode) => pageSentences(treeOfMarkup(renderToStaticMarkup(page)));

describe('what is read of a page', () => {
  const question = () => (
    <YesNoQuestion question="Does it hurt?" hint="In the joint." given={false} onAnswer={() => undefined} />
  );

  it('is the heading, the hint and each answer, with the one given before; no way back', () => {
    expect(readOf(question())).toEqual([
      'Does it hurt?',
      'In the joint.',
      'Yes',
      'No Your answer',
      'I don’t know',
    ]);
  });

  it('is in the language of the page', async () => {
    await speak('de');
    expect(readOf(question()).slice(2)).toEqual(['Ja', 'Nein Ihre Antwort', 'Weiß ich nicht']);
  });

  it('is each number of a score with its word', () => {
    const page = <ScoreQuestion question="How much?" low="no pain" high="worst" onAnswer={() => undefined} />;
    const read = readOf(page);
    expect(read).toHaveLength(1 + 12);
    expect([read[1], read[2], read[11], read[12]]).toEqual(['0 no pain', '1', '10 worst', 'I don’t know']);
  });

  it('is the name of an answer that shows a figure, and no running clock', () => {
    const draft = begin(today({ exercises: [exercise('a', weightDose)] }));
    const resting = {
      ...draft,
      items: draft.items.map((item) => ({
        ...item,
        sets: [
          {
            repetitions: 25,
            lostCount: false,
            reserve: null,
            stopReason: null,
            isStopped: false,
            finishedAt: 0,
          },
        ],
      })),
    };
    const props = {
      draft: resting,
      clinic: today({}).clinic,
      hasCuff: false,
      asksPregnancy: false,
      joint: 'right-knee' as const,
      item: 0,
      set: 1,
      send: () => undefined,
      clock: () => 1000,
    };
    const read = readOf(<RestPage {...props} />);
    expect(read).toContain('3 more');
    expect(read).not.toContain('3');
    expect(read.filter((sentence) => /^\d+:\d\d$/.test(sentence))).toEqual([]);
    expect(readOf(<ItemPage {...props} set={0} />)).toContain('Start set 1');
  });

  it('is nothing of what is folded away, and what is open of it', () => {
    const folded = (isOpen: boolean) => (
      <details open={isOpen}>
        <summary>How</summary>
        <p>Sit tall.</p>
      </details>
    );
    expect(readOf(folded(false))).toEqual([]);
    expect(readOf(folded(true))).toEqual(['How', 'Sit tall.']);
  });
});

// Web Speech API, SpeechSynthesisVoice: localService is true for a voice of the device itself.
describe('the voice', () => {
  it('speaks the language of the page, in whatever region, the preferred one first', () => {
    const british = voice('en-GB');
    const austrian = voice('de_AT');
    const preferred = voice('de-DE', { default: true });
    expect(voiceFor('en', [austrian, british])).toBe(british);
    expect(voiceFor('de', [british, austrian])).toBe(austrian);
    expect(voiceFor('de', [austrian, preferred])).toBe(preferred);
    expect(voiceFor('de', [british])).toBeNull();
    expect(voiceFor('de', [])).toBeNull();
  });

  it('is never one that sends the words elsewhere to be spoken', () => {
    const remote = voice('de-DE', { localService: false, default: true });
    expect(voiceFor('de', [remote])).toBeNull();
    const own = voice('de-DE');
    expect(voiceFor('de', [remote, own])).toBe(own);
  });
});

describe('reading', () => {
  const german = voice('de-DE');
  const endsOf = (sentences: readonly string[]) => {
    const speech = ownSpeech();
    const ends: SayingEnd[] = [];
    const stop = say(sentences, german, (end) => ends.push(end));
    return { ...speech, ends, stop };
  };

  it('says one sentence after the other in that voice, and is over with the last', () => {
    const { waiting, heard, ends } = endsOf(['Eins.', 'Zwei.']);
    expect(heard).toEqual(['Eins.', 'Zwei.']);
    expect(waiting.map((one) => [one.lang, one.voice])).toEqual([
      ['de-DE', german],
      ['de-DE', german],
    ]);
    waiting[0]!.end();
    expect(ends).toEqual([]);
    waiting[1]!.end();
    expect(ends).toEqual(['said']);
  });

  it('of nothing is over at once', () => {
    expect(endsOf([]).ends).toEqual(['said']);
  });

  it('stops at once, and nothing is told of it', () => {
    const { waiting, ends, stop } = endsOf(['Eins.', 'Zwei.']);
    stop();
    expect([waiting, ends]).toEqual([[], []]);
  });

  it('tells once that the browser could not, and takes being cut off for no fault', () => {
    const failing = endsOf(['Eins.', 'Zwei.']);
    for (const one of failing.waiting) one.fail('synthesis-failed');
    expect(failing.ends).toEqual(['unheard']);
    const cutOff = endsOf(['Eins.']);
    cutOff.waiting[0]!.fail('interrupted');
    expect(cutOff.ends).toEqual(['stopped']);
  });

  it('that is over silences nothing that is said after it', () => {
    const { waiting, stop } = endsOf(['Eins.']);
    waiting.splice(0)[0]!.end();
    say(['Zwei.'], german, () => undefined);
    stop();
    expect(waiting.map(({ text }) => text)).toEqual(['Zwei.']);
  });
});
