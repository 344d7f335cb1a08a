/** Warning signs. All of them are the clinic’s to approve before use. */
export const words = {
  'flag.chest-pain': 'Pain or pressure in the chest',
  'flag.breathlessness': 'Far more out of breath than is usual for this effort',
  'flag.fainting': 'You fainted, or almost did',
  'flag.face-speech-or-one-sided-weakness':
    'Your face droops, your speech is slurred, or one side of your body is weak or numb',
  'flag.severe-headache-or-vision': 'A sudden bad headache, or a change in your sight',
  'flag.saddle-or-bladder-change': 'Numb between the legs, or new trouble with bladder or bowels',
  'flag.hot-swollen-joint':
    'One joint is suddenly much hotter and more swollen than in your flares, or you feel ill with it',
  'flag.calf-pain-swelling': 'One calf is newly swollen, hot or tender, and it is not your usual soreness',
  'flag.dark-urine': 'Dark brown urine, or muscle pain far worse than you are used to',
  'flag.unexplained-fever': 'A fever, or chills, and you don’t know why',
  'flag.cannot-bear-weight-or-deformity': 'You can’t put weight on it, or it looks out of shape',
  'flag.persistent-limb-change-after-release':
    'Ten minutes after the cuff came off: numbness or pins and needles, or still pale, grey, bluish or swollen',
  'flag.neck-pain-with-limb-symptoms': 'Neck pain with numb, weak or clumsy arms or legs',
  'flag.new-weakness': 'New weakness in an arm or a leg',
  'flag.fall-with-injury': 'A fall that hurt you',
  'flag.locked-joint': 'A joint that is stuck and will not move',

  // The short question: each line names a family, and every sign above belongs to one. A new wording is a new number.
  'family.heart': 'Chest pain, fainting, or far more out of breath than usual',
  'family.stroke': 'Drooping face, slurred speech, one side weak or numb',
  'family.head': 'Sudden bad headache or change in sight',
  'family.nerves':
    'New weak, numb or clumsy limbs, also with neck pain; numb between the legs; bladder or bowel trouble',
  'family.joint': 'A joint suddenly hot and swollen, stuck, misshapen, or unable to carry you',
  'family.calf': 'A newly swollen, hot or tender calf',
  'family.muscle': 'Dark brown urine or very bad muscle pain',
  'family.fever': 'Fever or chills without known cause',
  'family.fall': 'A fall that hurt you',
  'family.cuff': 'Ten minutes after the cuff still numb, pale, bluish or swollen',
} as const;
