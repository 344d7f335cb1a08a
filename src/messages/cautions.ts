/** Cautions as the patient reads them. */
import type { OcclusionCheckId } from '#core/prescribing/cautions/ids.ts';
import type { PatientCaution } from '#core/prescribing/cautions/patient-caution.ts';
import { textOf } from './every-language.ts';
import { joined, type Text } from './text.ts';

export const cautionText = (caution: PatientCaution): Text => {
  switch (caution.key) {
    case 'not-checked': {
      const things = caution.things.map((thing) => textOf('unchecked', thing));
      return textOf('unchecked', 'not-checked', { things: joined(things, '; ') });
    }
    case 'blood-pressure-numbers': {
      return textOf('cautions', caution.key, {
        systolic: caution.reviewSystolic,
        diastolic: caution.reviewDiastolic,
        stopsystolic: caution.stopSystolic,
        stopdiastolic: caution.stopDiastolic,
      });
    }
    case 'limit':
      return textOf('limits', caution.kind, {
        joint: caution.joint,
        author: caution.author,
        // Only where a figure was set, and there it is given.
        kg: caution.kg ?? '',
      });
    default:
      return textOf('cautions', caution.key);
  }
};

export const occlusionCheckText = (id: OcclusionCheckId): Text => textOf('occlusion-checks', id);
