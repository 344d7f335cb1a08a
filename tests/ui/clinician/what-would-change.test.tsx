/** What would have changed a decision, as a clinician reads it. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { factFields } from '#core/decision/facts/fact-fields.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { whatWouldChange } from '#core/decision/what-would-change.ts';
import { words } from '#messages/en/staff/review/facts.ts';
import { facts } from '#tests/core/decision/base-facts.ts';
import { OtherAnswersView } from '#ui/clinician/review/other-answers-view.tsx';
import { WhatWouldChange } from '#ui/clinician/review/what-would-change.tsx';

const read = (told: Facts) => {
  const answers = decide(told);
  const others = whatWouldChange({ facts: told, settings: engineDefaults, engineVersion: '2', answers });
  const markup = renderToStaticMarkup(<OtherAnswersView answers={answers} others={others} />);
  return markup
    .replace(/<\/(p|h3|li)>/g, '\n')
    .replace(/<[^>]*>/g, '')
    .split('\n');
};

const lineOf = (told: Facts, start: string) => read(told).find((line) => line.startsWith(start));

describe('what would have changed a decision', () => {
  it('stands in one line a fact: what was told, what else would have given, and instead of what', () => {
    expect(lineOf(facts({}), 'Pain the next morning')).toBe(
      'Pain the next morning: 1. If 2 or 3: hold instead of progress. If 4 or 5: ease back instead of progress. ' +
        'If 6 or 7: ease back instead of progress, easier session today. If 8 to 10: pause instead of progress, ' +
        'no session today, contact the same day. If not answered: hold instead of progress.',
    );
    expect(lineOf(facts({}), 'Days without')).toBe(
      'Days without a session: 1 (counted over days). If 14 or more: ease back instead of progress.',
    );
    expect(lineOf(facts({}), 'Sessions on target')).toBe(
      'Sessions on target in a row: 2 (counted over days). If 0: hold instead of progress. If 1: a step in repetitions only.',
    );
  });

  it('says first what would have let more, and plainly where no single answer would', () => {
    const eased = read(facts({ painNextMorning: 5 }));
    expect(eased.indexOf('Would have let more')).toBeLessThan(
      eased.indexOf('Would have asked for more caution'),
    );
    expect(eased[eased.indexOf('Would have let more') + 1]).toBe(
      'Pain the next morning: 5. If 0 or 1: progress instead of ease back, a step in load. ' +
        'If 2 or 3: hold instead of ease back. If not answered: hold instead of ease back.',
    );
    expect(read(facts({ extraPainRelief: true, symptomSignal: true }))).toContain(
      'No single other answer would have let more.',
    );
  });

  it('names warning signs in words, one more or one less at a time', () => {
    expect(lineOf(facts({}), 'Warning signs')).toContain('If locked joint: pause instead of progress');
    expect(lineOf(facts({ redFlags: ['locked-joint'] }), 'Warning signs')).toBe(
      'Warning signs: locked joint. If none: progress instead of pause, a step in load, session as planned today, the rules ask for no contact. ' +
        'If not answered: hold instead of pause, session as planned today, the rules ask for no contact.',
    );
  });

  it('says of silence what it means: no answer, no change of medicine, no usual tiredness', () => {
    const quiet = facts({ painNextMorning: null, treatmentChangeDays: null });
    expect(lineOf(quiet, 'Pain the next morning')).toContain('Pain the next morning: not answered');
    expect(lineOf(quiet, 'Days since a change')).toContain('injection: none');
    expect(lineOf(facts({ fatigueRise: null }), 'Tiredness')).toContain('usual: not known');
  });

  it('says that it was not worked out rather than that nothing would have changed it', () => {
    const answers = decide(facts({}));
    const markup = renderToStaticMarkup(<OtherAnswersView answers={answers} others={null} />);
    expect(markup).toContain('Not worked out');
    expect(markup).not.toContain('No single');
  });

  it('has words of its own for every fact that a decision or a rule may name', () => {
    const names = [...factFields.map(({ name }) => name), 'peak', 'missing'];
    expect(names.filter((fact) => !(`fact.${fact}` in words))).toEqual([]);
  });

  it('costs the page that shows a decision one folded line, until somebody opens it', () => {
    const markup = renderToStaticMarkup(<WhatWouldChange patientId="p" decisionId="d" />);
    expect(markup).toContain('What would have changed it');
    expect(markup.length).toBeLessThan(200);
  });
});
