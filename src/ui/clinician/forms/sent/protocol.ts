/** The forms of a protocol: begun, its phases written, one confirmed, and its end. */
import type { PostedTexts } from '#api/inputs/posted-form.ts';
import {
  endFields,
  phaseFields,
  protocolFields,
  seenFields,
  stepFields,
} from '#core/episode/protocol/protocol-fields.ts';
import { say } from '#messages/en/staff/episode/protocol.ts';
import { ofPatient, patientForm, type SentForm } from './sent-form.ts';

const place = '/care/protocol';
const page = (about: PostedTexts) => `/patients/${ofPatient(about)}${place}`;
const protocolOf = (about: PostedTexts) => ({
  patientId: ofPatient(about),
  protocolId: about.protocolId ?? '',
});

/** The page knows the number of the phase and when it was written (empty = not yet); nobody types them. */
const ofPhase = ['patientId', 'protocolId', 'place', 'seen'];
/** Of the phase that holds, "yes": to write it anew asks what was seen, as its confirmation did. */
const holds = 'holds';
const withoutPlace = <F extends { readonly name: string }>(fields: readonly F[]): readonly F[] =>
  fields.filter(({ name }) => name !== 'place');
const placeOf = (about: PostedTexts) => Number(about.place);
const seenOf = ({ seen }: PostedTexts) => ({ seen: seen ? Number(seen) : null });

export const beginProtocol = patientForm({
  name: 'protocol',
  prefix: 'protocol-',
  fields: protocolFields,
  place,
  taken: say('begun'),
  send: ({ clinician }, { about, value: protocol }) =>
    clinician.protocols.begin.mutate({ patientId: ofPatient(about), protocol }),
});

export const writePhase: SentForm = {
  name: 'protocol-phase',
  about: [...ofPhase, holds],
  prefix: (about) => `phase-${about.protocolId}-${about.place}-`,
  fields: (about) => [...withoutPlace(phaseFields), ...(about[holds] ? seenFields : [])],
  page,
  taken: say('written'),
  send: ({ clinician }, { about, value: { seen, ...phase } }) =>
    clinician.protocols.writePhase.mutate({
      ...protocolOf(about),
      ...seenOf(about),
      phase: { ...phase, place: placeOf(about) },
      ...(about[holds] ? { step: { seen } } : {}),
    }),
};

export const confirmPhase: SentForm = {
  name: 'protocol-step',
  about: ofPhase,
  prefix: (about) => `step-${about.protocolId}-${about.place}-`,
  fields: () => withoutPlace(stepFields),
  page,
  taken: say('confirmed'),
  send: ({ clinician }, { about, value }) =>
    clinician.protocols.confirm.mutate({
      ...protocolOf(about),
      ...seenOf(about),
      step: { ...value, place: placeOf(about) },
    }),
};

export const endProtocol: SentForm = {
  name: 'protocol-end',
  about: ['patientId', 'protocolId'],
  prefix: (about) => `end-${about.protocolId}-`,
  fields: () => endFields,
  page,
  taken: say('ended'),
  send: ({ clinician }, { about, value: end }) =>
    clinician.protocols.end.mutate({ ...protocolOf(about), end }),
};
