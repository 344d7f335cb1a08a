/** A letter as it stands on paper, read on the screen before it is signed. */
import { say } from '#messages/en/staff/papers/letters.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { Letter } from '../answers.ts';

type Words = Letter['words'];

const Part = ({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) => (
  <section className="stack-close">
    <h4>{title}</h4>
    {lines.length === 1 ? (
      <p className="typed-text">{lines[0]}</p>
    ) : (
      <ul>
        {lines.map((line) => (
          <li key={line} className="typed-text">
            {line}
          </li>
        ))}
      </ul>
    )}
  </section>
);

const Outcomes = ({ outcomes: { title, heads, rows, none } }: Pick<Words, 'outcomes'>) => (
  <section className="stack-close">
    <h4>{title}</h4>
    <DataTable
      caption={title}
      hidesCaption
      columns={heads.map((head) => ({ key: head, title: head }))}
      rows={rows.map((cells) => ({ key: cells.join(), cells }))}
      empty={none}
    />
  </section>
);

export const LetterWordsView = ({ words }: { readonly words: Words }) => (
  <article lang={words.language} className="letter stack" aria-label={words.title}>
    {words.draft ? <p className="soft">{words.draft}</p> : null}
    <p>
      {words.from}
      <br />
      {words.written}
    </p>
    <p className="typed-text">{words.to.join('\n')}</p>
    <h3>{words.title}</h3>
    <p>{words.about}</p>
    {words.before.map((part) => (
      <Part key={part.title} {...part} />
    ))}
    <Outcomes outcomes={words.outcomes} />
    {words.after.map((part) => (
      <Part key={part.title} {...part} />
    ))}
    <p>{words.signature}</p>
    <p>{words.copies}</p>
    <Part title={words.reply.title} lines={[words.reply.boxes.map((one) => `☐ ${one}`).join('   ')]} />
    <Disclosure summary={say('record-behind')}>
      <div className="stack">
        {words.record.parts.map((part) => (
          <Part key={part.title} {...part} />
        ))}
      </div>
    </Disclosure>
  </article>
);
