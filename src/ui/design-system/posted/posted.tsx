'use client';
/** What came of a form that the browser sent itself, for the form to begin with when its page is shown again. */
import { createContext, type ReactNode, useContext, useState } from 'react';
import { isSameForm, type PostedAnswer, type PostedTexts } from '#api/inputs/posted-form.ts';
import { translate } from '#ui/language/words.ts';
import type { Problem } from '../error-summary.tsx';

const Answers = createContext<readonly PostedAnswer[]>([]);

export const PostedAnswers = (props: {
  readonly answers: readonly PostedAnswer[];
  readonly children: ReactNode;
}) => <Answers value={props.answers}>{props.children}</Answers>;

export interface WhatPosted {
  readonly typed: PostedTexts;
  readonly problems: readonly Problem[];
  readonly questions: readonly string[];
  readonly needsProof: boolean;
  /** Empty while it was not taken. */
  readonly done: string;
  readonly step: string | null;
  /** The last one sent: the page opens at it. */
  readonly isNewest: boolean;
}

const shownAgain = (answer: PostedAnswer, isNewest: boolean): WhatPosted => ({
  ...answer,
  problems: answer.problems.map(({ field, text }) => ({ field, text: translate(text) })),
  done: answer.done === null ? '' : translate(answer.done),
  isNewest,
});

/** Null where the form was not sent so; as it was when the form was shown first. */
export const usePosted = (form: string, about: PostedTexts = {}): WhatPosted | null => {
  const answers = useContext(Answers);
  const [posted] = useState(() => {
    const answer = answers.find((one) => isSameForm(one, { form, about }));
    return answer ? shownAgain(answer, answer === answers.at(-1)) : null;
  });
  return posted;
};
