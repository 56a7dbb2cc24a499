const GREEK: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  varepsilon: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  xi: 'ξ',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  varphi: 'φ',
  psi: 'ψ',
  omega: 'ω',
  Delta: 'Δ',
  Sigma: 'Σ',
  Theta: 'Θ',
  Phi: 'Φ',
  Omega: 'Ω',
  Lambda: 'Λ',
  ell: 'ℓ',
};

function plain(tex: string): string {
  return tex
    .replace(/\\(?:mathrm|text|mathit|operatorname)\b/g, '')
    .replace(/\\([A-Za-z]+) ?/g, (_, name: string) => GREEK[name] ?? '')
    .replace(/\\[,;! ]/g, '')
    .replace(/[{}]/g, '');
}

/** A symbol of the worked steps beside its label: a letter with at most a subscript, written without a typesetter. */
export function MathSymbol({ tex }: { tex: string }) {
  const [base = '', below] = tex.split('_');
  return (
    <span class="symbol" aria-hidden="true">
      <i>{plain(base)}</i>
      {below && <sub>{plain(below)}</sub>}
    </span>
  );
}
