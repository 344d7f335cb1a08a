/**
 * What each answer leaves of each method, written down a second time from the published lists and not
 * from the product's items. It shares no code with them; only the names of items and details are the same.
 *
 * Letters: o open, p open with precautions, c closed until cleared, x closed. "load" is work without a
 * cuff (variation and low load), "cuff" is occlusion. Marks: list = on a published list of stops or
 * precautions for occlusion work or for resistance work (Front Physiol 2022;13:808622; Diabetes Care
 * contraindications table; Heart Fail Rev 2023;28:1285; a continuing-education summary, second-hand);
 * memory = from memory; choice = a choice of this project.
 */
export type Letter = 'o' | 'p' | 'c' | 'x';
export type Where = 'all' | 'named' | 'leg' | 'arm' | 'joint';

export interface Row {
  readonly item: string;
  /** Left out: the answer alone. */
  readonly detail?: string;
  /** Falls away only where this detail is named. */
  readonly unless?: string;
  readonly where: Where;
  readonly load: Letter;
  readonly cuff: Letter;
  readonly because: RegExp;
  readonly mark: 'list' | 'memory' | 'choice';
}

const row = (
  item: string,
  [load, cuff]: readonly [Letter, Letter],
  because: RegExp,
  more: Partial<Pick<Row, 'detail' | 'unless' | 'where' | 'mark'>> = {},
): Row => ({ item, load, cuff, because, where: 'all', mark: 'list', ...more });

const of = (detail: string, where: Where = 'all', mark: Row['mark'] = 'list') => ({ detail, where, mark });
const memory = { mark: 'memory' } as const;
const setting = { mark: 'choice' } as const;

export const rows: readonly Row[] = [
  row('told-to-hold-off', ['c', 'c'], /doctor has asked for no exercise/, setting),
  row('new-chest-faint-or-breath', ['c', 'c'], /chest discomfort/),
  row('heart-condition', ['c', 'c'], /Unstable heart/, of('unstable')),
  row('heart-condition', ['c', 'c'], /^Heart condition/),
  row('heart-event', ['c', 'c'], /within three weeks/, of('within-three-weeks')),
  row('heart-event', ['c', 'c'], /^Unstable angina/, of('unstable-angina')),
  row('heart-event', ['c', 'c'], /since the heart event/, { unless: 'cleared-since', mark: 'choice' }),
  row('heart-event', ['c', 'c'], /^Coronary heart disease/),
  row('aneurysm-dissection-or-marfan', ['c', 'c'], /Aneurysm, aortic dissection or Marfan/),
  row('stroke-or-tia', ['c', 'c'], /since the stroke/, { unless: 'cleared-since', mark: 'memory' }),
  row('stroke-or-tia', ['p', 'c'], /^Stroke or attack in the past/, memory),
  row('high-blood-pressure', ['p', 'c'], /Diagnosed high blood pressure/, setting),
  row('fever-or-unwell', ['x', 'x'], /Fever or acute illness/),
  row('head-pressure-or-eye', ['c', 'c'], /Straining/),
  row('head-pressure-or-eye', ['o', 'x'], /pressure inside the skull/, of('raised-head-pressure')),

  row('past-clot', ['o', 'x'], /^Past or present clot/),
  row('past-clot', ['c', 'o'], /within the last four weeks/, of('within-four-weeks')),
  row('past-clot', ['c', 'o'], /still being treated/, of('being-treated', 'all', 'choice')),
  row('past-clot', ['p', 'o'], /^Earlier clot/, of('earlier-not-treated', 'all', 'choice')),
  row('past-clot', ['c', 'o'], /settled it/, of('when-not-known', 'all', 'choice')),
  row('clotting-or-bleeding-disorder', ['o', 'x'], /Own clotting/, of('own-clotting')),
  row('clotting-or-bleeding-disorder', ['o', 'x'], /Own bleeding/, of('own-bleeding')),
  row('clotting-or-bleeding-disorder', ['o', 'c'], /in the family/, of('family')),
  row('antiphospholipid-antibodies', ['o', 'x'], /Antiphospholipid/, memory),
  row('sickle-cell', ['o', 'x'], /Sickle-cell disease/, of('disease')),
  row('sickle-cell', ['o', 'c'], /Sickle-cell trait/, of('trait')),
  row('arterial-disease', ['p', 'o'], /Arterial disease may limit/, { where: 'named' }),
  row(
    'arterial-disease',
    ['o', 'x'],
    /Arterial disease or arterial surgery/,
    of('known-or-operated', 'named'),
  ),
  row('arterial-disease', ['o', 'c'], /Walking pain/, of('walking-pain', 'leg')),
  row('dialysis-access', ['p', 'x'], /Dialysis access/, { where: 'named' }),
  row('lymph', ['o', 'x'], /Lymph/, { where: 'named' }),
  row('veins', ['o', 'c'], /Aching varicose/, of('aching-veins', 'named')),
  row('veins', ['o', 'c'], /vein inflammation/, of('inflamed-vein')),
  row('swollen-calf', ['c', 'c'], /calf/),
  row('raynaud-or-systemic-sclerosis', ['o', 'c'], /Small vessels/, memory),
  row('vasculitis', ['o', 'c'], /Vasculitis/, memory),
  row('after-covid', ['o', 'c'], /COVID/),

  row('pregnancy-or-birth', ['c', 'x'], /Pregnancy or recent birth/),
  row('operation-plaster-or-bed', ['p', 'c'], /Recent operation, plaster or bed rest/),
  row('cancer', ['p', 'c'], /Active cancer/),
  row('diabetes', ['p', 'c'], /^Diabetes/),
  row('diabetes', ['o', 'x'], /Loss of feeling/, of('numbness', 'named', 'memory')),
  row('diabetes', ['c', 'c'], /eye/, of('eye-bleeding-or-laser')),
  row('diabetes', ['c', 'c'], /Uncontrolled diabetes/, of('poorly-controlled')),
  row('kidney-disease', ['o', 'c'], /Kidney disease/),
  row('no-feeling-or-cannot-say', ['p', 'o'], /reporting is reduced/, memory),
  row('no-feeling-or-cannot-say', ['o', 'c'], /Loss of feeling/, of('numbness', 'named', 'memory')),
  row('no-feeling-or-cannot-say', ['o', 'c'], /may not be reported/, of('cannot-say', 'all', 'memory')),
  row('medicines', ['p', 'c'], /Blood thinner/, of('blood-thinner', 'all', 'memory')),
  row('medicines', ['o', 'c'], /Oestrogen/, of('hormone-pill-or-patch')),
  row('medicines', ['o', 'c'], /Testosterone/, of('testosterone')),
  row('medicines', ['p', 'c'], /blood-pressure tablet/i, of('blood-pressure-tablet', 'all', 'memory')),
  row('medicines', ['p', 'p'], /Sugar may fall/, of('insulin-or-sulfonylurea', 'all', 'memory')),
  row('medicines', ['p', 'p'], /Long-term steroid/, of('long-term-steroid', 'all', 'memory')),
  row('medicines', ['p', 'p'], /^Statin/, of('statin')),
  row('medicines', ['p', 'p'], /^Colchicine/, of('colchicine', 'all', 'memory')),
  row('arthritis-medicines', ['o', 'c'], /JAK/, of('jak-inhibitor', 'all', 'memory')),
  row('arthritis-medicines', ['p', 'p'], /Biologic/, of('biologic', 'all', 'memory')),
  row('arthritis-medicines', ['p', 'p'], /quinolone/, of('recent-quinolone', 'all', 'memory')),

  row('wound-break-or-infection', ['o', 'x'], /at or below the cuff/, { where: 'named' }),
  row('wound-break-or-infection', ['p', 'o'], /Open skin/, of('sore-stitches-or-graft', 'named')),
  row('wound-break-or-infection', ['c', 'o'], /Recent fracture/, of('recent-break', 'named')),
  row('wound-break-or-infection', ['c', 'o'], /Infection of the limb/, of('infection', 'named')),
  row('skin-or-joint-under-cuff', ['o', 'x'], /under the cuff/, { where: 'named', mark: 'memory' }),
  // The joint itself is blocked wherever it is loaded; its limb hears of it and gets no cuff.
  row('hot-joint', ['p', 'c'], /Hot or clearly swollen/, { where: 'joint' }),
  row('artificial-joint-or-metalwork', ['p', 'c'], /^Artificial joint/, { where: 'named', mark: 'memory' }),
  row(
    'rhabdomyolysis-or-muscle-disease',
    ['c', 'c'],
    /^Rhabdomyolysis before/,
    of('rhabdomyolysis', 'all', 'memory'),
  ),
  row(
    'rhabdomyolysis-or-muscle-disease',
    ['c', 'c'],
    /^Muscle disease/,
    of('muscle-disease', 'all', 'memory'),
  ),
  row('rheumatoid-arthritis', ['p', 'p'], /arthritis/i),
  row('neck-in-rheumatoid-arthritis', ['c', 'c'], /arms waits/, { where: 'arm', mark: 'memory' }),
  row('neck-in-rheumatoid-arthritis', ['p', 'p'], /unloaded and neutral/, { where: 'leg', mark: 'memory' }),
  row('osteoporosis', ['p', 'p'], /Fragile bone/, memory),
];

/** Items that change nutrition and leave every method as it is. */
export const withoutEffect: readonly string[] = ['weight-loss-or-eating'];
