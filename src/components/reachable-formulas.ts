interface Node {
  type: string;
  tagName?: string;
  properties?: Record<string, unknown>;
  children?: Node[];
}

/** A displayed formula may be wider than a phone and then scrolls: without a mouse it must take the focus to do so. */
export function reachableFormulas() {
  return function visit(node: Node): void {
    const classes = node.properties?.['className'];
    if (Array.isArray(classes) && classes.includes('katex-display')) {
      node.properties = { ...node.properties, tabIndex: 0, role: 'group', ariaLabel: 'Formula' };
      return;
    }
    node.children?.forEach(visit);
  };
}
