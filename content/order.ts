/** The reading order. An article that is not named here does not build; a name without an article neither. */
export interface Chapter {
  slug: string;
  title: string;
  /** What the chapter decides, one sentence. */
  decides: string;
  articles: readonly string[];
}

export const chapters: readonly Chapter[] = [
  {
    slug: 'layout',
    title: 'Layout',
    decides: 'Where the motors stand, how near the propellers come, and what hovering takes.',
    articles: ['motor-layout'],
  },
  {
    slug: 'arms',
    title: 'Arms',
    decides: 'How the arm meets the body, and how far the root must be thickened.',
    articles: [
      'what-reaches-an-arm',
      'falling-flat',
      'tube-or-plate',
      'arm-joints',
      'holes-and-notches',
      'doublers',
      'motor-mounts',
      'motor-screws',
      'vibration',
    ],
  },
  {
    slug: 'body',
    title: 'Body',
    decides: 'How tall the body stands, on how many posts, and what a nose-first hit does to it.',
    articles: ['electronics-fit', 'standoff-lengths', 'plates-and-standoffs', 'tongues-and-webs', 'screws', 'drawings'],
  },
  {
    slug: 'balance',
    title: 'Balance',
    decides: 'Where the heaviest part sits, and what the motors pay for it.',
    articles: ['battery-placement'],
  },
  {
    slug: 'materials',
    title: 'Materials',
    decides: 'Which plies, at which angles, in which order.',
    articles: ['laminates'],
  },
];
