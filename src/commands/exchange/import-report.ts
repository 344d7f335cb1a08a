/** What was found in a file, in lines for whoever reads them at a terminal. */
import type { Prepared } from '#exchange/import/prepare.ts';

const readAs = ({ asked, mapping }: Prepared): readonly string[] => {
  if (asked.format === 'fhir')
    return [`read as FHIR R4, ${asked.isLines ? 'one resource a line' : 'a Bundle'}`];
  const { kind, separator, encoding, days, decimal } = asked;
  return [
    `read as ${kind}: ${separator} between cells, ${encoding}, days ${days}, decimal ${decimal}`,
    ...(mapping?.mapped ?? []).map(
      ({ column, heading, isGuessed }) =>
        `${column.name} ← "${heading}"${isGuessed ? ' (found by its heading)' : ''}`,
    ),
    ...(mapping?.notTaken ?? []).map((heading) => `nothing is taken of "${heading}"`),
  ];
};

export const reportLines = (prepared: Prepared): readonly string[] => {
  const { read, taken, byKind, firstDay, lastDay, faultyPlaces, questions } = prepared.report;
  const kinds = Object.entries(byKind).map(([kind, count]) => `${kind} ${count}`);
  return [
    ...readAs(prepared),
    `${read} rows: ${[...kinds, `left out ${faultyPlaces}`].join(', ')}${taken > 0 && firstDay ? `; ${firstDay} to ${lastDay}` : ''}`,
    ...questions.flatMap(({ id, about, count, examples }) => [
      `asked · ${id} (${count}): ${about}`,
      ...examples.map((one) => `  ${one}`),
    ]),
  ];
};
