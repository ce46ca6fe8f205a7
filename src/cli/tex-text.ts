/** What the few TeX commands of our formulas look like in plain text. */
const words: readonly (readonly [RegExp, string])[] = [
  [/\\(?:left|right|quad|bigl|bigr)(?![a-zA-Z])|\\[,;!]/g, ' '],
  [/\\dots/g, '…'],
  [/\\omega/g, 'ω'],
  [/\\lambda/g, 'λ'],
  [/\\ell/g, 'l'],
  [/\\lceil/g, 'round up ('],
  [/\\rceil/g, ')'],
  [/\\lfloor/g, 'round down ('],
  [/\\rfloor/g, ')'],
  [/\\(?:cdot|times)/g, '×'],
  [/\\pi/g, 'π'],
  [/\\theta/g, 'θ'],
  [/\\rho/g, 'ρ'],
  [/\\varphi/g, 'φ'],
  [/\\gamma/g, 'γ'],
  [/\\Delta/g, 'Δ'],
  [/\\mu/g, 'μ'],
  [/\\alpha/g, 'α'],
  [/\\eta/g, 'η'],
  [/\\(max|min|arctan|cos|sin|tan|exp|ln)/g, '$1'],
  [/\\([%$])/g, '$1'],
]

const fraction = /\\[td]?frac\{((?:[^{}]|\{[^{}]*\})*)\}\{((?:[^{}]|\{[^{}]*\})*)\}/
const root = /\\sqrt\{((?:[^{}]|\{[^{}]*\})*)\}/

/** A formula for the terminal: fractions as (a)/(b), Greek letters as such, braces gone. */
export function texAsText(tex: string): string {
  let text = tex
    .replace(/\\(?:text|mathrm|mathit|operatorname)\{([^{}]*)\}/g, '$1')
    .replaceAll('{,}', ',')
    .replace(/_\{([a-zA-Z0-9]+)\}/g, '_$1')
  // Fractions and roots from the inside out; only then may loose braces go, since they hold the
  // parts together.
  const settle = (change: (t: string) => string): void => {
    for (let before = ''; before !== text; ) {
      before = text
      text = change(text)
    }
  }
  settle((t) =>
    t
      .replace(/(?<![}a-zA-Z_^])\{([^{}]*)\}(?!\{)/g, '$1')
      .replace(fraction, '($1)/($2)')
      .replace(root, '√($1)'),
  )
  settle((t) => t.replace(/(?<![_^])\{([^{}]*)\}/g, '$1'))
  for (const [pattern, stand] of words) text = text.replace(pattern, stand)
  return text
    .replace(/\^\{?2\}?/g, '²')
    .replace(/\^\{?3\}?/g, '³')
    .replace(/_\{([^{}]*)\}/g, '_$1')
    .replace(/[{}]/g, '')
    .replace(/\s+/g, ' ')
    .trim()
}
