/** The notes of one person, newest day first, searched without scripts, and a new one beside them. */
import { noteParts } from '#core/episode/visit-note.ts';
import { say } from '#messages/en/staff/episode/visit-notes.ts';
import { Button } from '#ui/design-system/button.tsx';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { wholeDayText } from '../../language/text-of-time.ts';
import type { VisitNotes } from '../answers.ts';
import { optionInWords } from '../forms/field-words.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { NoteForm, type NoteFormProps } from './note-form.tsx';

interface NotesScreenProps extends NoteFormProps {
  readonly answer: VisitNotes;
  readonly wanted: string;
  readonly clock: ClinicClock;
}

type Note = VisitNotes['notes'][number];

const headingOf = (note: Note, part: (typeof noteParts)[number]): string | null => {
  if (part !== 'text') return say(`part.${part}`);
  return noteParts.some((other) => other !== 'text' && note[other] !== null) ? say('without-headings') : null;
};

const NoteItem = ({ note, clock }: { readonly note: Note; readonly clock: ClinicClock }) => (
  <article className="note stack-close" aria-labelledby={`note-${note.id}`}>
    <h3 id={`note-${note.id}`}>{wholeDayText(note.day)}</h3>
    <p className="soft small">
      {say('by', {
        contact: optionInWords(note.contact),
        name: note.byName,
        at: momentInWords(note.recordedAt, clock),
      })}
    </p>
    {noteParts.map((part) => {
      const heading = headingOf(note, part);
      return note[part] === null ? null : (
        <div key={part} className="note-part">
          {heading ? <h4>{heading}</h4> : null}
          <p className="typed-text">{note[part]}</p>
        </div>
      );
    })}
  </article>
);

const Search = ({ patientId, answer, wanted }: NotesScreenProps) => (
  <form method="get" action={`/patients/${patientId}/care/notes`} className="row row-end screen-only">
    <TextField name="wanted" label={say('find')} type="search" autoComplete="off" defaultValue={wanted} />
    <Button type="submit" tone="plain">
      {say('find-go')}
    </Button>
    {wanted ? (
      <p role="status">
        {say('found', { count: answer.notes.length, all: answer.all })}{' '}
        <a href={`/patients/${patientId}/care/notes`}>{say('show-all')}</a>
      </p>
    ) : null}
  </form>
);

/** A letter holds no note but those that are ticked here. */
const NotesInLetter = ({ patientId, answer }: NotesScreenProps) => (
  <form method="get" action={`/patients/${patientId}/care/letters`} className="stack-close screen-only">
    <CheckboxGroup
      name="note"
      legend={say('in-letter')}
      hint={say('in-letter-hint')}
      options={answer.notes.map(({ id, day, byName }) => ({
        value: id,
        label: wholeDayText(day),
        hint: byName,
      }))}
    />
    <Button type="submit" tone="plain">
      {say('open-letter')}
    </Button>
  </form>
);

export const NotesScreen = (props: NotesScreenProps) => {
  const { answer, clock } = props;
  return (
    <div className="visit-notes">
      <section className="stack-close screen-only" aria-labelledby="write-note">
        <h2 id="write-note">{say('write')}</h2>
        <NoteForm {...props} />
        <p className="soft small">{say('about')}</p>
      </section>
      <section className="stack" aria-labelledby="notes-heading">
        <h2 id="notes-heading">{say('title')}</h2>
        {answer.all === 0 ? <p className="soft">{say('none')}</p> : <Search {...props} />}
        {answer.notes.map((note) => (
          <NoteItem key={note.id} note={note} clock={clock} />
        ))}
        {answer.notes.length > 0 ? <NotesInLetter {...props} /> : null}
      </section>
    </div>
  );
};
