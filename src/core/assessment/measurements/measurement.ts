/** Measurements of a patient. Each has unit, method, who and when; the kind fixes unit and bounds. */
import type { Limb, Side } from '#core/exercises/joints.ts';
import type { Position } from '#core/prescribing/dose.ts';
import type { Day } from '#core/time/day.ts';

export type Measurement =
  | { readonly kind: 'body-mass'; readonly day: Day; readonly massKg: number }
  | { readonly kind: 'stature'; readonly day: Day; readonly statureCm: number }
  | { readonly kind: 'body-fat'; readonly day: Day; readonly bodyFatPercent: number; readonly method: string }
  | {
      readonly kind: 'blood-pressure';
      readonly day: Day;
      readonly systolicMmhg: number;
      readonly diastolicMmhg: number;
      readonly position: Position;
    }
  | {
      readonly kind: 'limb-circumference';
      readonly day: Day;
      readonly limb: Limb;
      readonly side: Side;
      /** Where on the limb, such as "mid-thigh". */
      readonly site: string;
      readonly circumferenceCm: number;
    }
  | {
      readonly kind: 'limb-occlusion-pressure';
      readonly day: Day;
      readonly limb: Limb;
      readonly side: Side;
      readonly cuffWidthCm: number;
      readonly position: Position;
      readonly method: 'doppler' | 'pulse-oximeter' | 'automated';
      /** Two readings at least one minute apart; the lower one is used. */
      readonly firstMmhg: number;
      readonly secondMmhg: number;
    }
  | {
      readonly kind: 'ankle-brachial-index';
      readonly day: Day;
      readonly side: Side;
      readonly dorsalisPedisMmhg: number;
      readonly posteriorTibialMmhg: number;
      readonly brachialMmhg: readonly number[];
    }
  | {
      readonly kind: 'repetitions-to-failure';
      readonly day: Day;
      readonly exerciseId: string;
      readonly side: Side | 'both';
      readonly loadKg: number;
      readonly repetitions: number;
    }
  | { readonly kind: 'chair-stand-30s'; readonly day: Day; readonly stands: number }
  | { readonly kind: 'timed-up-and-go'; readonly day: Day; readonly seconds: number }
  | { readonly kind: 'grip'; readonly day: Day; readonly side: Side; readonly forceKg: number }
  | {
      readonly kind: 'isometric-force';
      readonly day: Day;
      readonly site: string;
      readonly side: Side;
      readonly forceN: number;
    }
  | {
      readonly kind: 'joint-counts';
      readonly day: Day;
      /** Of 28 joints each. */
      readonly tender: number;
      readonly swollen: number;
      readonly patientGlobal: number;
      readonly clinicianGlobal: number;
    }
  | {
      readonly kind: 'patient-chosen-activity';
      readonly day: Day;
      readonly activity: string;
      readonly score: number;
    };

export type MeasurementOf<K extends Measurement['kind']> = Extract<Measurement, { readonly kind: K }>;
