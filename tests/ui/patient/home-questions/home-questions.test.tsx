/** What the clinic asks now and then: one quiet line on today's page, one question a page, nothing taken for an answer. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import type { QuestionsDue, TodayView } from '#api/patient/today-view.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { today } from '#tests/ui/patient/views.ts';
import { setLanguage } from '#ui/language/words.ts';
import { dayState } from '#ui/patient/day-state.ts';
import {
  answered,
  answerText,
  begun,
  firstOpen,
  homeAnswersEntry,
  isOf,
  placeAt,
  questionText,
  stepAfter,
} from '#ui/patient/home-questions/home-draft.ts';
import { HomeQuestionsScreen } from '#ui/patient/home-questions/home-questions-screen.tsx';
import type { Saved } from '#ui/patient/outbox/outbox.ts';
import { TodayPage } from '#ui/patient/today/today-page.tsx';
import { viewOnDay } from '#ui/patient/view-on-day.ts';

const due: QuestionsDue = {
  homeQuestionsId: 'nights',
  title: 'Nights and days',
  version: 2,
  questions: [
    { kind: 'score', text: 'How was the night?', low: 'calm', high: 'awful' },
    { kind: 'yes-no', text: 'Did you go out?', low: null, high: null },
    { kind: 'words', text: 'What was hardest?', low: null, high: null },
  ],
  knownEntryIds: ['earlier'],
};
const activities: QuestionsDue = {
  homeQuestionsId: 'chosen',
  title: null,
  version: null,
  questions: [{ kind: 'activity', text: 'Stairs' }],
  knownEntryIds: [],
};
const nothing = () => undefined;
afterEach(() => setLanguage());

const saved = (over: Partial<Saved>): Saved => ({
  entryId: 'new',
  ownerId: 'p',
  kind: 'home-answers',
  encrypted: null,
  entry: null,
  day: '2026-03-09',
  savedAt: 0,
  isUrgent: false,
  status: 'stored',
  early: 0,
  clockDoubtful: false,
  ...over,
});
const dueOf = (more: Partial<TodayView>, entries: readonly Saved[] = [], day = '2026-03-09') =>
  dayState(viewOnDay(today({ questionsDue: [due, activities], ...more }), day), entries, 0).questionsDue;

describe('what is due on this phone', () => {
  it('is the first set; answered here it makes room for the next, whether the clinic has it yet or not', () => {
    expect(dueOf({})).toBe(due);
    for (const status of ['waiting', 'stored'] as const)
      expect(dueOf({}, [saved({ homeQuestionsId: 'nights', status })])).toBe(activities);
  });

  it('is due all the same where the clinic counted the answers already, or could not take them', () => {
    expect(dueOf({}, [saved({ homeQuestionsId: 'nights', entryId: 'earlier' })])).toBe(due);
    expect(dueOf({}, [saved({ homeQuestionsId: 'nights', status: 'aside' })])).toBe(due);
  });

  it('stays due on the next day without signal, as long as the page counts', () => {
    expect([dueOf({}, [], '2026-03-12'), dueOf({}, [], '2026-03-13')]).toEqual([due, null]);
  });

  it('is nothing while a warning sign stands, at the clinic or told from this phone', () => {
    expect(dueOf({ isStopped: true })).toBeNull();
    expect(dueOf({}, [saved({ kind: 'sign', isUrgent: true })])).toBeNull();
  });

  it('is nothing on a page that names none', () => {
    expect(dayState(viewOnDay(today(), '2026-03-09'), [], 0).questionsDue).toBeNull();
  });
});

describe('the line on today’s page', () => {
  const page = (more: Partial<TodayView>, onQuestionsDue?: () => void) => {
    const view = viewOnDay(today(more), '2026-03-09');
    return renderToStaticMarkup(
      <TodayPage
        view={view}
        runningSince={null}
        state={dayState(view, [], 0)}
        isReady
        onStart={nothing}
        onResume={nothing}
        onMorning={nothing}
        onPain={nothing}
        onChangeMorning={nothing}
        onTwoHours={nothing}
        {...(onQuestionsDue ? { onQuestionsDue } : {})}
      />,
    );
  };

  it('says how many, under the start and with a quiet button', () => {
    const html = page({ questionsDue: [due] }, nothing);
    expect(html).toContain('Your clinic has 3 questions for you now.');
    expect(html).toMatch(/<button[^>]*class="button button-quiet"[^>]*>Answer now</);
    expect(html.indexOf('Start')).toBeLessThan(html.indexOf('Your clinic has'));
    expect(page({ questionsDue: [activities] }, nothing)).toContain(
      'Your clinic has 1 question for you now.',
    );
  });

  it('is not there where nothing is due, under a warning sign, or until its pages are there', () => {
    expect(page({}, nothing)).not.toContain('Your clinic asks');
    expect(page({ questionsDue: [due], isStopped: true }, nothing)).not.toContain('Your clinic asks');
    expect(page({ questionsDue: [due] })).not.toContain('Your clinic asks');
  });
});

const screen = (of: QuestionsDue, step: string) =>
  renderToStaticMarkup(
    <HomeQuestionsScreen
      ownerId="p"
      due={of}
      clinic={today().clinic}
      enteredAs={null}
      step={step}
      clock={() => 0}
      arrivalOf={() => 'kept'}
      onStep={nothing}
      onSave={async () => true}
      onHome={nothing}
    />,
  );
const valuesIn = (html: string) =>
  [...html.matchAll(/<button[^>]*value="([^"]*)"/g)].map(([, value]) => value);

describe('a question', () => {
  it('of 0 to 10 shows both ends in the clinic’s words, "I don’t know", and nothing chosen', () => {
    const html = screen(due, '');
    expect(valuesIn(html)).toEqual([...Array.from({ length: 11 }, (_, score) => String(score)), 'unknown']);
    for (const word of ['calm', 'awful', 'Nights and days: question 1 of 3']) expect(html).toContain(word);
    expect(html).not.toContain('answer-given');
  });

  it('of yes and no, and one in own words, can be answered with "I don’t know" too', () => {
    expect(valuesIn(screen(due, '1'))).toEqual(['true', 'false', 'unknown']);
    const words = screen(due, '2');
    expect(words).toMatch(/<textarea[^>]*maxLength="500"/i);
    expect(words).toContain('I don’t know');
  });

  it('of an activity asks in the patient’s language, and names the activity as it was told', () => {
    expect(questionText(activities.questions[0]!)).toBe('How well can you do this now? Stairs');
    const { de } = everyLanguage;
    setLanguage({ tag: 'de', locale: de.locale, forms: de.forms, words: de.pages });
    const html = screen(activities, '');
    for (const word of ['Wie gut geht das jetzt? Stairs', 'gar nicht', 'so gut wie früher'])
      expect(html).toContain(word);
  });

  it.each([['', '0', '2', 'check']])('says on every page where a warning sign is told', (...steps) => {
    for (const step of steps) {
      const html = screen(due, step);
      expect(html).toContain('Something has changed');
      expect(html).toContain('href="tel:01234"');
    }
  });

  it('is asked before anything can be checked or sent: a page sent forward shows the first open one', () => {
    expect(screen(due, 'check')).toContain('How was the night?');
    expect(screen(due, 'check')).not.toContain('Send to the clinic');
  });
});

describe('answers', () => {
  const all = [7, false, ' Stairs '].reduce(
    (draft, answer, place) => answered(draft, place, answer as number | boolean | string),
    begun(due),
  );

  it('go on to the next question, and to the check once none is open', () => {
    const one = answered(begun(due), 0, 0);
    expect([stepAfter(one, 0), firstOpen(one)]).toEqual(['1', 1]);
    expect([stepAfter(all, 2), stepAfter(all, 0), placeAt(all, 'check')]).toEqual(['check', 'check', null]);
  });

  it('read back as given; one that is open says so, and "I don’t know" is no zero', () => {
    const texts = due.questions.map((question, place) => answerText(question, all.slots[place]));
    expect(texts).toEqual(['7 of 10', 'No', 'Stairs']);
    expect(answerText(due.questions[0]!, null)).toBe('not answered');
    expect(answerText(due.questions[0]!, { answer: null })).toBe('I don’t know');
  });

  it('in own words of blanks alone are none', () => {
    expect(firstOpen(answered(all, 2, '   '))).toBe(2);
  });

  it('become one entry with an id, the version answered, and who typed it', () => {
    const known = answered(all, 0, null);
    expect(homeAnswersEntry({ entryId: 'id', day: '2026-03-09', enteredAs: 'relative' }, known)).toEqual({
      entryId: 'id',
      day: '2026-03-09',
      homeQuestionsId: 'nights',
      version: 2,
      answers: [
        { question: 'How was the night?', answer: null },
        { question: 'Did you go out?', answer: false },
        { question: 'What was hardest?', answer: 'Stairs' },
      ],
      enteredAs: 'relative',
      redFlags: null,
    });
  });

  it('kept on the phone are taken up for the very same questions alone', () => {
    expect(isOf(all, due)).toBe(true);
    expect(isOf(all, { ...due, version: 3 })).toBe(false);
    expect(isOf(all, { ...due, homeQuestionsId: 'other' })).toBe(false);
    expect(isOf(all, { ...due, questions: due.questions.slice(1) })).toBe(false);
  });
});
