/** A signed note, and what of nutrition the patient is shown. */
import { visitNoteFields } from '#core/episode/visit-note.ts';
import { adviceFields } from '#core/nutrition/picture/nutrition-advice.ts';
import { say as sayNutrition } from '#messages/en/staff/episode/nutrition.ts';
import { say } from '#messages/en/staff/episode/visit-notes.ts';
import { ofPatient, patientForm } from './sent-form.ts';

export const signNote = patientForm({
  name: 'visit-note',
  prefix: 'note-',
  fields: visitNoteFields,
  place: '/care/notes',
  taken: say('saved'),
  send: ({ clinician }, { about, value: note }) =>
    clinician.visitNotes.record.mutate({ patientId: ofPatient(about), note }),
});

export const showAdvice = patientForm({
  name: 'nutrition-advice',
  prefix: 'advice-',
  fields: adviceFields,
  place: '/nutrition',
  taken: sayNutrition('signed'),
  send: ({ clinician }, { about, value: advice, isConfirmed: confirmed }) =>
    clinician.nutrition.show.mutate({ patientId: ofPatient(about), advice, confirmed }),
});
