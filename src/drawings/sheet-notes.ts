import { cuttingList, type FrameOutline } from '@frameworthy/shared/outline';

const mm = (length: number) => String(Math.round(length * 1e5) / 100);

/**
 * What the lines of a saved drawing can't tell a cutter, in millimetres as the sheet is. Drawings of one frame tell it once.
 * @param markup of drawings made with `FullSize`, which carry what they were drawn from
 */
export function sheetNotes(markup: string): string[] {
  const drawn = [...markup.matchAll(/ data-source="([^"]*)"/g)].map(
    ([, json]) =>
      JSON.parse(
        json!
          .replace(/&quot;/g, '"')
          .replace(/&lt;/g, '<')
          .replace(/&gt;/g, '>')
          .replace(/&amp;/g, '&'),
      ) as FrameOutline,
  );
  const notes = drawn.flatMap((outline) => {
    const { arms, holes } = cuttingList(outline);
    return [
      ...arms.map(({ size, count }) => `${count} arms, cut to ${mm(size)} mm from end to end.`),
      ...holes.map(({ name, size, count }) => `${count} × Ø${mm(size)} mm: ${name}.`),
    ];
  });
  return [...new Set(notes)];
}
