/** Cautions go with every prescription, can be added to, and are never lost. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exerciseCautions } from '#core/exercises/cautions.ts';
import { joints } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import { type CautionsInput, withCautions } from '#core/prescribing/cautions/cautions-for.ts';
import { screeningItems } from '#core/screening/items.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { sources } from '#core/sources/index.ts';
import { holdsIn } from '#tests/support/holds.ts';
import { bloodPressure, screeningWith } from '../../screening/answers.ts';
import { allYes, cautions, cuff, doses, ids, wrap } from './doses.ts';

describe('every prescription', () => {
  it.each(doses.map((dose) => [dose.method, dose] as const))(
    'of %s defers to the clinician and local rules, says when to stop and what was not checked',
    (_, dose) => {
      const list = cautions({ dose, screening: null });
      expect(ids(list)).toEqual(
        expect.arrayContaining(['clinician-decides', 'stop-signs', 'same-day-signs', 'not-checked']),
      );
      expect(list.find(({ id }) => id === 'clinician-decides')?.text).toMatch(
        /licensed clinician.*local rules/,
      );
    },
  );

  it('tells the patient each caution by its own key', () => {
    for (const dose of doses) {
      const list = cautions({ dose, screening: screeningWith(allYes), joints, exerciseCautions });
      const others = list.filter(({ id, patient }) => patient.key !== id).map(({ patient }) => patient.key);
      // Blood pressure carries the clinic's numbers, which a sentence by its key alone could not.
      expect(others).toEqual(['blood-pressure-numbers']);
    }
  });

  it('says each caution once', () => {
    for (const dose of doses) {
      const list = ids(cautions({ dose, screening: screeningWith(allYes), joints }));
      expect(new Set(list).size).toBe(list.length);
    }
  });

  it('says what was not checked, less of it once it was measured', () => {
    const said = (changed: Partial<CautionsInput>) =>
      cautions(changed).find(({ id }) => id === 'not-checked')?.text ?? '';
    expect(said({ screening: null })).toContain('none recorded');
    expect(said({})).toContain('resting blood pressure');
    expect(said({ measurements: [bloodPressure(120, 76)] })).not.toContain('resting blood pressure');
    expect(said({ dose: cuff })).toContain('ankle-brachial index');
    expect(said({ dose: wrap })).toContain('pressure under the wrap');
  });

  it('tells the patient of the same things as the clinician', () => {
    const things = (changed: Partial<CautionsInput>) => {
      const told = cautions(changed).find(({ id }) => id === 'not-checked')?.patient;
      return told?.key === 'not-checked' ? told.things : [];
    };
    const always = ['clots', 'heart-under-effort', 'bone-strength', 'movement-at-home'];
    expect(things({ screening: null })).toEqual([...always, 'health-questions', 'blood-pressure']);
    expect(things({ measurements: [bloodPressure(120, 76)] })).toEqual(always);
    const cuffed = [...always, 'blood-pressure', 'vessels-by-imaging', 'ankle-brachial-index'];
    expect(things({ dose: cuff })).toEqual(cuffed);
    expect(new Set(things({ dose: wrap, screening: null }))).toContain('wrap-pressure');
  });
});

describe('method and cuff', () => {
  it('a wrap says that its pressure is not known, a cuff that its pressure belongs to it', () => {
    expect(ids(cautions({ dose: wrap }))).toContain('wrap-pressure-unknown');
    expect(ids(cautions({ dose: wrap }))).not.toContain('cuff-pressure-belongs-to-this-cuff');
    expect(ids(cautions({ dose: cuff }))).toContain('cuff-pressure-belongs-to-this-cuff');
  });
  it('work without supervision says what a stopped phone means', () => {
    expect(ids(cautions({ dose: wrap }))).toContain('occlusion-alone');
    expect(ids(cautions({ dose: cuff }))).not.toContain('occlusion-alone');
  });
});

describe('screening and medicines', () => {
  it('"not known" brings the caution of "yes"; "no" brings none', () => {
    for (const item of screeningItems) {
      const of = (answer: ScreeningItemAnswer['answer']) =>
        ids(cautions({ dose: cuff, screening: screeningWith([{ item: item.id, answer }]), joints })).filter(
          (id) => id === `screening-${item.id}`,
        );
      expect(of('yes')).toHaveLength(1);
      expect(of('not-known')).toEqual(of('yes'));
      expect(of('no')).toEqual([]);
    }
  });

  it('brings each named medicine class, and says that none was named instead of claiming any', () => {
    const medicine = (details?: string[]) =>
      ids(cautions({ screening: screeningWith([{ item: 'medicines', answer: 'yes', details }]) })).filter(
        (id) => id.startsWith('medicine-'),
      );
    expect(medicine(['blood-thinner'])).toEqual(['medicine-blood-thinner']);
    expect(medicine()).toEqual(['medicine-not-said']);
    expect(medicine([])).toEqual(['medicine-not-said']);
    expect(medicine(['statin', 'colchicine'])).toEqual(['medicine-statin', 'medicine-colchicine']);
    const notKnown = screeningWith([{ item: 'arthritis-medicines', answer: 'not-known', details: [] }]);
    expect(ids(cautions({ screening: notKnown })).filter((id) => id.startsWith('medicine-'))).toEqual([
      'medicine-not-said',
    ]);
  });
});

describe('nothing is ever lost', () => {
  const answersArbitrary = fc.array(
    fc.record({
      item: fc.constantFrom(...screeningItems.map(({ id }) => id)),
      answer: fc.constantFrom('yes', 'not-known'),
    }),
    { maxLength: 6 },
  ) as fc.Arbitrary<ScreeningItemAnswer[]>;
  const jointsArbitrary = fc.subarray([...joints]);
  const extra = (id: string): Caution => ({
    id,
    text: id,
    patient: { key: 'stop-signs' },
    from: 'exercise',
    support: 'clinic',
  });

  it('when answers, joints or exercise cautions are added', () => {
    holdsIn(
      3000,
      fc.constantFrom(...doses),
      answersArbitrary,
      answersArbitrary,
      jointsArbitrary,
      jointsArbitrary,
      fc.subarray(['one', 'two', 'clinician-decides']),
      (dose, few, more, someJoints, moreJoints, exercise) => {
        const fewer = ids(
          cautions({ dose, screening: { ...screeningWith(), answers: few }, joints: someJoints }),
        );
        const all = ids(
          cautions({
            dose,
            screening: { ...screeningWith(), answers: [...few, ...more] },
            joints: [...someJoints, ...moreJoints],
            exerciseCautions: exercise.map(extra),
          }),
        );
        expect(fewer.filter((id) => !all.includes(id))).toEqual([]);
        expect(exercise.filter((id) => !all.includes(id))).toEqual([]);
      },
    );
  });

  it('and a caution of the same name cannot replace the one that stands', () => {
    const list = cautions({ exerciseCautions: [{ ...extra('stop-signs'), text: 'Nothing to see.' }] });
    expect(list.find(({ id }) => id === 'stop-signs')?.text).toContain('emergency care');
    expect(ids(list).filter((id) => id === 'stop-signs')).toHaveLength(1);
    expect(ids(withCautions(list, []))).toEqual(ids(list));
  });
});

describe('the words', () => {
  const everything = doses.flatMap((dose) =>
    cautions({ dose, screening: screeningWith(allYes), joints, measurements: [] }),
  );

  it('never promise what was not checked', () => {
    const text = everything.map((caution) => caution.text).join('\n');
    expect(text).not.toMatch(/\bsafe(ly|ty)?\b|harmless|no risk|guarantee/i);
  });

  it('rest on a known source, common practice or the clinic', () => {
    const unknown = everything
      .map(({ support }) => support)
      .filter((key) => !['clinic', 'common-practice'].includes(key) && !Object.hasOwn(sources, key));
    expect(unknown).toEqual([]);
  });
});
