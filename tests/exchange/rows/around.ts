/** Rows of signs, pauses, limits, messages, notes and a correction. */
import { at, by, day, own } from './begin.ts';

export const around = {
  warning_sign: [
    {
      ...own('sign-1'),
      source: 'patient',
      flags: ['calf-pain-swelling'],
      joint: 'right-knee',
      urgency: 'same-day',
      entryId: null,
      remark: 'Since noon',
    },
  ],
  contact_attempt: [
    {
      ...own('contact-1'),
      signIds: ['sign-1'],
      decisionIds: [],
      reached: 'patient',
      found: 'Calf soft',
      advised: 'Rest',
      referredTo: 'GP',
      nextAt: null,
    },
  ],
  pause: [
    { ...own('pause-1'), cause: 'warning-sign', signId: 'sign-1', joint: null, reason: 'Sign', until: null },
  ],
  pause_resumption: [{ ...own('resumed-1'), pauseId: 'pause-1', itemId: null, reason: 'Seen' }],
  care_limit: [
    {
      ...own('limit-1'),
      joint: 'right-knee',
      kind: 'range',
      limitKg: null,
      movement: 'flexion',
      fromDegrees: 0,
      toDegrees: 90,
      fromDay: day,
      toDay: '2026-04-02',
      author: 'Surgeon',
      remark: null,
    },
  ],
  message: [{ id: 'message-1', text: 'Well done.', sentAt: at, sentBy: by, sentName: 'Ada Quill' }],
  patient_message: [{ ...own('message-2'), text: 'Thank you.' }],
  visit_note: [
    {
      ...own('note-1'),
      episodeId: 'episode-1',
      day,
      contact: 'clinic',
      subjective: 'Better',
      objective: null,
      assessment: null,
      plan: 'Go on',
      text: null,
    },
  ],
  clearance: [
    {
      ...own('clearance-1'),
      day,
      method: 'occlusion',
      limb: 'leg',
      side: 'left',
      findings: ['family-clotting-disorder'],
      reason: 'Tested normal',
    },
  ],
  correction: [
    {
      id: 'correction-1',
      subject: 'measurement',
      subjectId: 'm-grip-l',
      joint: null,
      enteredAt: at,
      firstSaidAt: at,
      reason: 'Other hand',
      replacedById: 'm-grip-r',
      waits: false,
      correctedAt: at,
      correctedBy: by,
      correctedName: 'Ada Quill',
    },
  ],
};
