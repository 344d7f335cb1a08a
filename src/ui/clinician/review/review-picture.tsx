'use client';
/** The picture with its key, and the words of what is under the pointer or the keyboard. */
import dynamic from 'next/dynamic';
import { useCallback, useMemo, useState } from 'react';
import { dayNumber } from '#core/day.ts';
import { decisions } from '#core/engine/answers.ts';
import type { GateMark, Picture } from '#core/review/picture.ts';
import { Mark } from '#ui/shared/mark.tsx';
import { decisionStatus } from '../words.ts';
import { gateName } from './picture-gates.tsx';

const Chart = dynamic(() => import('./picture-chart.tsx'), {
  ssr: false,
  loading: () => <p className="soft">Drawing the picture. The words and the table state the same.</p>,
});

const Key = ({ picture }: { readonly picture: Picture }) => (
  <p className="pic-key">
    <span>
      <span className="key-mark key-stair" aria-hidden="true" /> {picture.title.toLowerCase()}
      {picture.unit ? `, ${picture.unit}` : ''}
    </span>
    <span>
      <span className="key-mark key-full" aria-hidden="true" /> session
    </span>
    <span>
      <span className="key-mark key-easier" aria-hidden="true" /> easier session
    </span>
    <span>
      <span className="key-mark key-morning" aria-hidden="true" /> morning pain
    </span>
    <span>
      <span className="key-mark key-session" aria-hidden="true" /> highest pain in a session
    </span>
    {picture.pains.some((mark) => mark.flare) ? (
      <span>
        <span className="key-mark key-flare" aria-hidden="true" /> morning of a flare
      </span>
    ) : null}
    <span>
      <span aria-hidden="true">×</span> answer missing
    </span>
    <span>
      <span aria-hidden="true">?</span> load not known
    </span>
    {decisions
      .filter((word) => picture.gates.some((gate) => gate.word === word))
      .map((word) => (
        <span key={word} className="key-gate">
          <Mark shape={decisionStatus[word].shape} /> {decisionStatus[word].word.toLowerCase()}
        </span>
      ))}
  </p>
);

interface Told {
  readonly title: string;
  readonly lines: readonly string[];
  readonly href: string | null;
}

const start: Told = {
  title: 'Point at a day, or go along the decisions with Tab and the arrow keys.',
  lines: [],
  href: null,
};

export const ReviewPicture = ({ picture }: { readonly picture: Picture }) => {
  const [told, setTold] = useState(start);
  const texts = useMemo(
    () => new Map(picture.days.map(({ day, text }) => [dayNumber(day), text])),
    [picture],
  );
  const onGate = useCallback(
    (gate: GateMark) =>
      setTold({ title: gateName(gate, picture.today), lines: gate.reasons, href: `#decision-${gate.id}` }),
    [picture],
  );
  const onDay = useCallback(
    (day: number) => {
      const text = texts.get(day);
      if (text) setTold((known) => (known.title === text ? known : { title: text, lines: [], href: null }));
    },
    [texts],
  );
  return (
    <figure className="picture stack-close">
      <figcaption>
        <Key picture={picture} />
      </figcaption>
      <div className="picture-box">
        <Chart picture={picture} onGate={onGate} onDay={onDay} />
      </div>
      <div className="picture-told screen-only" aria-live="polite">
        <p>
          <strong>{told.title}</strong>
          {told.href ? (
            <>
              {' '}
              <a href={told.href}>Whole decision</a>
            </>
          ) : null}
        </p>
        {told.lines.length > 0 ? (
          <ul>
            {told.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        ) : null}
      </div>
    </figure>
  );
};
