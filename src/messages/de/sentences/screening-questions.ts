/** What is asked about health. */
import type { ScreeningItemId } from '#core/screening/items.ts';

export const screeningQuestions = {
  'told-to-hold-off': 'Hat Ihnen eine Ärztin oder ein Arzt gesagt, dass Sie zurzeit nicht trainieren sollen?',
  'new-chest-faint-or-breath':
    'Hatten Sie in den letzten vier Wochen Beschwerden in der Brust, Ohnmacht oder Atemnot, die neu sind oder schlimmer werden?',
  'heart-condition':
    'Haben Sie Herzschwäche, eine Rhythmusstörung, eine kranke Herzklappe, einen Herzschrittmacher oder einen Defibrillator?',
  'heart-event':
    'Hatten Sie je einen Herzinfarkt, Brustenge (Angina pectoris), einen Stent am Herzen oder einen Bypass?',
  'aneurysm-dissection-or-marfan':
    'Hat man Ihnen gesagt, dass Ihre Hauptschlagader erweitert oder eingerissen ist (Aneurysma, Dissektion)? Oder dass Sie ein Aneurysma im Kopf oder das Marfan-Syndrom haben?',
  'stroke-or-tia': 'Hatten Sie je einen Schlaganfall, oder vorübergehend Anzeichen davon (TIA)?',
  'high-blood-pressure':
    'Hat Ihnen je jemand gesagt, dass Ihr Blutdruck hoch ist, auch wenn er jetzt behandelt und in Ordnung ist?',
  'fever-or-unwell':
    'Haben Sie Fieber oder einen Infekt der Bronchien oder der Lunge, oder fühlen Sie sich heute krank?',
  'head-pressure-or-eye':
    'Haben Sie erhöhten Druck im Schädel oder eine abgelöste Netzhaut, oder wurden Sie vor Kurzem am Auge operiert?',
  'past-clot': 'Hatten Sie je ein Blutgerinnsel in einem Bein, einem Arm oder der Lunge?',
  'clotting-or-bleeding-disorder':
    'Wurde bei Ihnen ärztlich eine Störung der Blutgerinnung festgestellt, oder gibt es eine in Ihrer engen Familie?',
  'antiphospholipid-antibodies': 'Hat man Ihnen gesagt, dass Sie Antiphospholipid-Antikörper haben?',
  'sickle-cell': 'Haben Sie die Sichelzellkrankheit, oder könnten Sie die Anlage dazu tragen?',
  'arterial-disease':
    'Hatten Sie an den Arterien von Arm oder Bein eine Operation, einen Stent oder einen Gefäßersatz? Oder haben Sie beim Gehen Schmerzen im Bein, die in Ruhe nachlassen?',
  'dialysis-access':
    'Haben Sie in einem Arm oder Bein einen Zugang für die Dialyse (Fistel, Gefäßersatz oder Port)?',
  lymph: 'Wurden Lymphknoten entfernt oder bestrahlt, oder schwillt ein Arm oder Bein wegen der Lymphe an?',
  veins: 'Haben Sie Krampfadern, die schmerzen, oder hatten Sie einmal eine entzündete Vene?',
  'swollen-calf': 'Ist eine Wade seit Kurzem geschwollen, warm oder druckempfindlich?',
  'raynaud-or-systemic-sclerosis':
    'Werden Ihre Finger oder Zehen in der Kälte weiß und taub? Oder hat man Ihnen gesagt, dass Sie systemische Sklerose haben?',
  vasculitis: 'Hat man Ihnen gesagt, dass Sie entzündete Blutgefäße haben (Vaskulitis)?',
  'after-covid':
    'Hat seit einer COVID-19-Infektion eine Ärztin oder ein Arzt von einem erhöhten Risiko für Blutgerinnsel gesprochen?',
  'pregnancy-or-birth':
    'Sind Sie schwanger, könnten Sie es sein, oder haben Sie in den letzten 12 Wochen ein Kind geboren?',
  'operation-plaster-or-bed':
    'Hatten Sie in den letzten 12 Wochen eine Operation oder einen Gips? Oder lagen Sie in dieser Zeit mehr als drei Tage meist im Bett?',
  cancer: 'Haben Sie jetzt Krebs, oder wurden Sie in den letzten sechs Monaten deswegen behandelt?',
  diabetes: 'Haben Sie Diabetes?',
  'kidney-disease': 'Haben Sie eine Nierenkrankheit?',
  'no-feeling-or-cannot-say':
    'Ist ein Arm oder Bein taub, oder wäre es schwer für Sie, zu sagen, dass sich etwas nicht richtig anfühlt?',
  medicines: 'Nehmen Sie eines dieser Medikamente?',
  'arthritis-medicines':
    'Nehmen Sie einen JAK-Hemmer oder ein Biologikum? Oder haben Sie in den letzten Wochen ein Antibiotikum aus der Gruppe der Chinolone genommen?',
  'weight-loss-or-eating':
    'Haben Sie ungewollt abgenommen, oder machen Sie sich Sorgen, dass Essen oder Gewicht für Sie zum Problem geworden ist?',
  'wound-break-or-infection':
    'Haben Sie an Arm oder Bein eine offene Stelle, eine Naht, einen frischen Bruch, eine Hautverpflanzung oder eine Infektion?',
  'skin-or-joint-under-cuff':
    'Ist dort, wo eine Manschette oder Binde säße, die Haut dünn oder leicht verletzlich, oder ist ein Gelenk entzündet?',
  'hot-joint': 'Ist heute ein Gelenk heiß oder deutlich stärker geschwollen als sonst?',
  'artificial-joint-or-metalwork':
    'Haben Sie ein künstliches Gelenk, oder Platten, Schrauben, Nägel oder Stäbe in einem Knochen?',
  'rhabdomyolysis-or-muscle-disease':
    'Sind bei Ihnen je Muskeln nach großer Anstrengung zerfallen, mit dunklem Urin? Oder haben Sie eine Muskelkrankheit?',
  'rheumatoid-arthritis':
    'Haben Sie Rheuma in den Gelenken (rheumatoide Arthritis) oder eine andere entzündliche Arthritis?',
  'neck-in-rheumatoid-arthritis':
    'Bei rheumatoider Arthritis: Ist Ihr Nacken betroffen, oder kribbelt es in Armen oder Beinen, wenn Sie ihn bewegen?',
  osteoporosis:
    'Haben Sie Osteoporose, oder haben Sie sich bei einem leichten Sturz einen Knochen gebrochen?',
} as const satisfies Readonly<Record<ScreeningItemId, string>>;
