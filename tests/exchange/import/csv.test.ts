/** A CSV file of past days: how it is written is said, and what it is not is told row by row. */
import { describe, expect, it } from 'vitest';
import { whyNotTaken } from '#exchange/import/prepare.ts';
import { bytesOf, readThrough, thingsIn } from './read-through.ts';

const head = 'day,joint,pain,stiffness_minutes,fatigue';
const mornings = (...rows: readonly string[]) => [head, ...rows].join('\r\n');
const nobody = { confirmed: [], leavesOutFaulty: false } as const;

describe('a file as it was said to be written', () => {
  it('gives what stands in it, and an empty cell is not answered and never zero', async () => {
    const read = await readThrough(mornings('2026-02-01,right-knee,3,,0', '2026-02-02,Right knee,,20,'));
    expect(read.faults).toEqual([]);
    expect(await thingsIn(read)).toEqual([
      {
        ...{ kind: 'morning', day: '2026-02-01' },
        value: { joint: 'right-knee', pain: 3, stiffnessMinutes: null, fatigue: 0 },
      },
      {
        ...{ kind: 'morning', day: '2026-02-02' },
        value: { joint: 'right-knee', pain: null, stiffnessMinutes: 20, fatigue: null },
      },
    ]);
  });

  it.each([
    ['semicolon', ';'],
    ['tab', '\t'],
  ] as const)(
    'may have a %s between its cells, and is not read with another one said',
    async (separator, mark) => {
      const text = mornings('2026-02-01,right-knee,3,,').replaceAll(',', mark);
      expect((await readThrough(text, { separator })).report.taken).toBe(1);
      await expect(readThrough(text)).rejects.toThrow(`the heading is one cell. Say ${separator}`);
    },
  );

  const umlaut = 'day,exercise,sets\n2026-02-01,Übung,3\n';
  const wide = (order: 'le' | 'be') => {
    const bytes = Buffer.from(`\uFEFF${umlaut}`, 'utf16le');
    return new Uint8Array(order === 'le' ? bytes : bytes.swap16());
  };
  it.each([
    ['UTF-8', 'utf-8', new TextEncoder().encode(umlaut)],
    ['UTF-8 with its mark', 'utf-8', new TextEncoder().encode(`\uFEFF${umlaut}`)],
    ['UTF-16, the low byte first', 'utf-16', wide('le')],
    ['UTF-16, the high byte first', 'utf-16', wide('be')],
    ['Windows-1252', 'windows-1252', new Uint8Array(Buffer.from(umlaut, 'latin1'))],
  ] as const)('may be %s', async (_, encoding, bytes) => {
    const things = await thingsIn(await readThrough(bytes, { kind: 'sessions', encoding }));
    expect(things[0]?.value).toMatchObject({ exercise: 'Übung', sets: 3 });
  });

  it.each([
    ['utf-8', new Uint8Array(Buffer.from(umlaut, 'latin1')), 'bytes that are no utf-8'],
    ['utf-8', wide('le'), 'the mark of UTF-16'],
    ['windows-1252', new TextEncoder().encode(`\uFEFF${umlaut}`), 'the mark of UTF-8'],
    ['utf-16', new TextEncoder().encode(umlaut), 'does not begin with its mark'],
  ] as const)('is not read as %s where its bytes say otherwise', async (encoding, bytes, words) => {
    await expect(readThrough(bytes, { kind: 'sessions', encoding })).rejects.toThrow(words);
  });

  it.each([
    ['DD.MM.YYYY', '1.2.2026'],
    ['DD/MM/YYYY', '01/02/2026'],
    ['MM/DD/YYYY', '02/01/2026'],
  ] as const)('writes its days %s', async (days, text) => {
    const read = await readThrough(mornings(`${text},right-knee,3,,`), { days });
    expect((await thingsIn(read))[0]?.day).toBe('2026-02-01');
  });

  it('writes decimals with a comma only where that was said', async () => {
    const text = 'day;weight_kg\n2026-02-01;72,5\n';
    const said = await readThrough(text, { kind: 'measurements', separator: 'semicolon', decimal: 'comma' });
    expect((await thingsIn(said))[0]?.value).toEqual({ what: 'body-mass', massKg: 72.5 });
    const other = await readThrough(text, { kind: 'measurements', separator: 'semicolon' });
    expect(other.faults[0]?.write).toMatch(/say that decimals are written with a comma/);
  });
});

describe('a row that cannot be taken', () => {
  it.each([
    ['a day that does not exist', '2026-02-30,right-knee,3,,', 'day', '2026-02-30', 'A day that exists'],
    ['a day after today', '2026-03-03,right-knee,3,,', 'day', '2026-03-03', 'no later than today'],
    ['a day before the birth', '1958-05-31,right-knee,3,,', 'day', '1958-05-31', 'no earlier than the birth'],
    ['no day', ',right-knee,3,,', 'day', '', 'The day.'],
    ['a joint nobody has', '2026-02-01,middle-knee,3,,', 'joint', 'middle-knee', 'One of left-shoulder'],
    ['no joint', '2026-02-01,,3,,', 'joint', '', 'The joint the answers are about'],
    ['pain over the scale', '2026-02-01,right-knee,11,,', 'pain', '11', 'A whole number from 0 to 10'],
    ['pain between two numbers', '2026-02-01,right-knee,3.5,,', 'pain', '3.5', 'A whole number from 0 to 10'],
    ['a word for a number', '2026-02-01,right-knee,much,,', 'pain', 'much', 'A whole number from 0 to 10'],
    ['nothing but the day', '2026-02-01,right-knee,,,', '', '', 'Something beside the day'],
    ['a cell too few', '2026-02-01,right-knee,3,', '', '4 cells', '5 cells, as the heading has'],
    ['a cell too many', '2026-02-01,right-knee,3,,,', '', '6 cells', '5 cells, as the heading has'],
    ['what cannot be seen', '2026-02-01,right-knee,3\u0000,,', 'pain', '3\u0000', 'what cannot be seen'],
  ])(
    'is told with its row, its column, what was found and what to write: %s',
    async (_, row, at, found, write) => {
      const { faults, report } = await readThrough(mornings('2026-02-01,left-knee,1,,', row));
      expect(faults).toEqual([{ place: 3, at, found, write: expect.stringContaining(write) }]);
      expect([report.taken, report.faultyPlaces]).toEqual([1, 1]);
    },
  );

  it.each([
    ['under', 'pain', '0', true],
    ['at', 'pain', '10', true],
    ['over', 'pain', '11', false],
    ['under', 'weight_kg', '24.9', false],
    ['at', 'weight_kg', '25', true],
    ['at the top', 'weight_kg', '350', true],
    ['over', 'weight_kg', '350.1', false],
  ])('%s the bound of %s: %s', async (_, name, value, fits) => {
    const { faults } = await readThrough(`day,${name}\n2026-02-01,${value}\n`, { kind: 'measurements' });
    expect(faults.length === 0).toBe(fits);
  });

  it.each([
    ['one figure alone', '120,', 'Both figures'],
    ['the wrong way round', '80,120', 'below the systolic one'],
  ])('of blood pressure: %s', async (_, cells, write) => {
    const text = `day,systolic_mmhg,diastolic_mmhg\n2026-02-01,${cells}\n`;
    expect((await readThrough(text, { kind: 'measurements' })).faults[0]?.write).toContain(write);
  });

  it('with a quote out of place ends the reading: behind it nobody knows where a row begins', async () => {
    await expect(
      readThrough(mornings('2026-02-01,right-knee,3,,', '2026-02-02,"right"-knee,3,,')),
    ).rejects.toThrow('Row 3: there is a quote inside a cell');
    await expect(readThrough(mornings('2026-02-01,"right-knee,3,,'))).rejects.toThrow('never closed');
  });
});

describe('which column holds what', () => {
  const german = 'Datum,Gelenk,Schmerz,Notiz\n2026-02-01,right-knee,3,x\n';

  it('is found by headings that are often used, is shown as found, and counts once it is said', async () => {
    const found = await readThrough(german);
    expect(
      found.mapping?.mapped.map(({ column, heading, isGuessed }) => [column.name, heading, isGuessed]),
    ).toEqual([
      ['day', 'Datum', true],
      ['joint', 'Gelenk', true],
      ['pain', 'Schmerz', true],
    ]);
    expect(found.mapping?.notTaken).toEqual(['Notiz']);
    const [why] = whyNotTaken(found, nobody, []);
    expect(why).toContain('say: day=Datum, joint=Gelenk, pain=Schmerz');
    const said = await readThrough(german, { map: 'day=Datum, joint=Gelenk, pain=Schmerz' });
    expect(whyNotTaken(said, nobody, [])).toEqual([]);
  });

  it.each([
    ['a heading that is not there', 'day=Tag', 'No column is headed "Tag"'],
    ['a column that is not taken', 'mood=Notiz', '"mood=Notiz" names no column'],
    ['one heading for two things', 'pain=Notiz, fatigue=Notiz', 'is named for two things'],
  ])('is not said with %s', async (_, map, words) => {
    await expect(readThrough(german, { map })).rejects.toThrow(words);
  });

  it('is not to be known where two columns are headed alike, or none holds the day', async () => {
    await expect(readThrough('day,pain,pain\n')).rejects.toThrow('Two columns are headed "pain"');
    await expect(readThrough('joint,pain\n')).rejects.toThrow('No column holds the day');
    await expect(readThrough('')).rejects.toThrow('The file is empty');
  });
});

describe('what is asked before a file is taken', () => {
  const weights = (...rows: readonly string[]) =>
    readThrough(['day,weight_kg', ...rows].join('\n'), { kind: 'measurements' });
  const ids = ({ report }: Awaited<ReturnType<typeof weights>>) => report.questions.map(({ id }) => id);

  it('is a weight far from the last one: not at ten per cent, over it', async () => {
    expect(ids(await weights('2026-02-01,80', '2026-02-08,88'))).toEqual([]);
    const far = await weights('2026-02-01,80', '2026-02-08,88.1');
    expect(ids(far)).toEqual(['unlikely']);
    expect(far.report.questions[0]?.examples[0]).toContain('Row 3: 88.1 kg is 10 % away from 80 kg');
    expect(whyNotTaken(far, nobody, [])[0]).toContain('unlikely (1)');
    expect(whyNotTaken(far, { ...nobody, confirmed: ['unlikely'] }, [])).toEqual([]);
  });

  it('is the same thing twice for one day, and days more than ten years ago', async () => {
    expect(ids(await weights('2026-02-01,80', '2026-02-01,80'))).toEqual(['same-day-twice']);
    expect(ids(await weights('2016-02-29,80'))).toEqual(['long-ago']);
    expect(ids(await weights('2016-03-01,80'))).toEqual([]);
  });

  it('is whether day and month are the right way round, where every day reads both ways', async () => {
    const read = (row: string) => readThrough(mornings(row), { days: 'DD/MM/YYYY' });
    expect((await read('03/02/2026,right-knee,3,,')).report.questions.map(({ id }) => id)).toEqual([
      'day-order',
    ]);
    expect((await read('13/02/2026,right-knee,3,,')).report.questions).toEqual([]);
  });
});

it('takes the rest of a file with wrong rows only where that is said', async () => {
  const read = await readThrough(mornings('2026-02-01,right-knee,3,,', '2026-02-02,right-knee,11,,'));
  expect(whyNotTaken(read, nobody, [])[0]).toContain('1 of 2 rows cannot be taken');
  expect(whyNotTaken(read, { ...nobody, leavesOutFaulty: true }, [])).toEqual([]);
});

it('reads a text that an export has guarded as it was before', async () => {
  const read = await readThrough("day,exercise,sets\n2026-02-01,'=1+1,3\n", { kind: 'sessions' });
  expect((await thingsIn(read))[0]?.value).toMatchObject({ exercise: '=1+1' });
});

it('reads the same in whichever pieces the bytes come', async () => {
  const bytes = new TextEncoder().encode(
    'day,exercise,sets\n2026-02-01,"Übung\u00A0„a“",3\n2026-02-02,b,4\n',
  );
  const whole = await thingsIn(await readThrough(bytesOf(bytes), { kind: 'sessions' }));
  const byByte = async function* () {
    for (const byte of bytes) yield new Uint8Array([byte]);
  };
  expect(await thingsIn(await readThrough(byByte, { kind: 'sessions' }))).toEqual(whole);
});
