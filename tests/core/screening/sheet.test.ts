/** The sheet itself: own wording, a minimum per method, and no figure taken for more than it is. */
import { describe, expect, it } from 'vitest';
import { methods } from '#core/prescribing/methods.ts';
import { itemsBeforeOcclusion, screeningItem, screeningItems } from '#core/screening/items.ts';
import { medicineClasses } from '#core/screening/medicine-classes.ts';
import { sources } from '#core/sources/index.ts';

describe('the screening sheet', () => {
  it('asks each question once, in kebab-case ids', () => {
    const ids = screeningItems.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[a-z]+(-[a-z]+)*$/.test(id))).toEqual([]);
  });

  it('holds the 22 questions of the sheet and those beyond it', () => {
    expect(screeningItems.length).toBeGreaterThanOrEqual(22 + 9);
    const beyond = [
      'antiphospholipid-antibodies',
      'raynaud-or-systemic-sclerosis',
      'vasculitis',
      'skin-or-joint-under-cuff',
      'arthritis-medicines',
      'neck-in-rheumatoid-arthritis',
      'osteoporosis',
    ];
    expect(beyond.map((id) => screeningItem(id)?.mark)).toEqual(beyond.map(() => 'memory'));
    expect(beyond.filter((id) => !screeningItem(id)?.clinicianLabel.includes('from memory'))).toEqual([]);
  });

  it.each(methods)('keeps every question that can close %s in its minimum set', (method) => {
    const closing = screeningItems.filter(
      (item) =>
        item.blocksJoints !== undefined ||
        item.effects.some(
          (effect) => effect.methods.includes(method) && effect.eligibility !== 'open-with-precautions',
        ),
    );
    expect(closing.filter((item) => !item.minimumFor.includes(method)).map(({ id }) => id)).toEqual([]);
  });

  it('asks less before low load than before occlusion, so that low load can be opened first', () => {
    const minimum = (method: (typeof methods)[number]) =>
      screeningItems.filter((item) => item.minimumFor.includes(method)).map(({ id }) => id);
    expect(minimum('low-load').length).toBeLessThan(minimum('occlusion').length / 2);
    expect(minimum('low-load').filter((id) => !minimum('occlusion').includes(id))).toEqual([]);
  });

  it('asks again before each occlusion session what can have changed since the last one', () => {
    const ids = itemsBeforeOcclusion.map(({ id }) => id);
    expect(ids).toEqual(
      expect.arrayContaining([
        'new-chest-faint-or-breath',
        'pregnancy-or-birth',
        'wound-break-or-infection',
        'fever-or-unwell',
        'operation-plaster-or-bed',
        'medicines',
        'swollen-calf',
        'hot-joint',
      ]),
    );
  });

  it('uses each effect code once, and only details that the question offers', () => {
    const codes = screeningItems.flatMap((item) => item.effects.map(({ code }) => code));
    expect(codes.filter((code, at) => codes.indexOf(code) !== at)).toEqual([]);
    const stray = screeningItems.flatMap((item) =>
      item.effects
        .filter(({ detail }) => detail && !item.asks.details?.includes(detail))
        .map(({ code }) => code),
    );
    expect(stray).toEqual([]);
    const limbsNotAsked = screeningItems.filter(
      (item) => item.effects.some(({ scope }) => scope === 'answered-limbs') && !item.asks.limbs,
    );
    expect(limbsNotAsked).toEqual([]);
  });

  it('names who may clear a closing that can be cleared, and nobody where none may', () => {
    const effects = screeningItems.flatMap((item) => item.effects);
    expect(
      effects.filter(
        ({ eligibility, clearedBy }) => (eligibility === 'closed-until-cleared') !== (clearedBy !== null),
      ),
    ).toEqual([]);
  });

  it('rests each item on a known source, or says that it is common practice or the clinic', () => {
    const keys = screeningItems.flatMap((item) => [item.support, ...(item.alsoSee ?? [])]);
    const unknown = keys.filter(
      (key) => !['clinic', 'common-practice'].includes(key) && !Object.hasOwn(sources, key),
    );
    expect(unknown).toEqual([]);
  });

  it('describes each medicine class that it asks for', () => {
    const asked = ['medicines', 'arthritis-medicines'].flatMap((id) => screeningItem(id)?.asks.details ?? []);
    expect(medicineClasses.map(({ id }) => id)).toEqual(asked);
  });
});
