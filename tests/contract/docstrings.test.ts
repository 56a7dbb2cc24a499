import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { sources } from '../../content/sources/index.ts';

const ROOT = 'shared/src';
/** Units and parsing compute nothing about frames; the files at the root only guard inputs. */
const files = readdirSync(ROOT, { recursive: true })
  .map(String)
  .filter(
    (file) => file.endsWith('.ts') && !file.endsWith('index.ts') && file.includes('/') && !file.startsWith('quantity/'),
  )
  .sort();

interface Documented {
  name: string;
  doc: string;
  parameters: string[];
  throwing: boolean;
}

function exportedFunctions(file: string): Documented[] {
  const text = readFileSync(`${ROOT}/${file}`, 'utf8');
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  return tree.statements.flatMap((statement) => {
    if (!ts.isFunctionDeclaration(statement) || !statement.name) return [];
    if (!statement.modifiers?.some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword)) return [];
    const doc = ts
      .getJSDocCommentsAndTags(statement)
      .map((node) => node.getText())
      .join('\n');
    return [
      {
        name: statement.name.text,
        doc,
        parameters: statement.parameters.map((parameter) => parameter.name.getText()),
        throwing: /\brequire[A-Z]|throw new InputError/.test(statement.body?.getText() ?? ''),
      },
    ];
  });
}

const listed = files.flatMap((file) => exportedFunctions(file).map((found) => ({ file, ...found })));
/** The public face of a topic is its index. What only helps inside the folder needs a sentence, not the whole form. */
const isPublic = ({ file, name }: { file: string; name: string }) => {
  const index = readFileSync(`${ROOT}/${file.split('/')[0]}/index.ts`, 'utf8');
  return new RegExp(`\\b${name}\\b`).test(index) || index.includes(`export * from './${file.split('/')[1]}'`);
};
/** A guard refuses values and computes none. */
const computing = listed.filter((found) => !/^require[A-Z]/.test(found.name) && isPublic(found));

describe('docstrings of the package', () => {
  test('there are functions to look at', () => {
    expect(computing.length).toBeGreaterThan(50);
  });

  test.each(computing.map((found) => [`${found.file} ${found.name}`, found] as const))(
    '%s says what it computes',
    (_, { doc }) => {
      expect(doc).toMatch(/\/\*\*\s*\n?\s*\*?\s*[A-Z][^@]{15,}/);
    },
  );

  test.each(computing.map((found) => [`${found.file} ${found.name}`, found] as const))(
    '%s has units, a return and a source or derivation',
    (_, { doc, throwing }) => {
      expect(doc).toContain('@returns');
      expect(doc).toMatch(/@(source|derivation)\s+\S/);
      if (throwing) expect(doc).toContain('@throws');
    },
  );

  test('every source that is named is in the bibliography', () => {
    const wrong = computing.flatMap(({ file, name, doc }) =>
      [...doc.matchAll(/@source\s+([\w-]+)/g)]
        .map((match) => match[1] as string)
        .filter((key) => !(key in sources))
        .map((key) => `${file} ${name}: ${key}`),
    );
    expect(wrong).toEqual([]);
  });

  test('files stay short', () => {
    const long = files.filter((file) => readFileSync(`${ROOT}/${file}`, 'utf8').split('\n').length > 151);
    expect(long).toEqual([]);
  });
});
