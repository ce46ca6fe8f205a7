/** A new element with what stands in it. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  ...inside: (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name)
  made.append(...inside)
  return made
}

/** The same with a class. */
export function classed<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  className: string,
  ...inside: (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const made = element(name, ...inside)
  made.className = className
  return made
}

/** A button that does something. */
export function button(words: string, act: (made: HTMLButtonElement) => void): HTMLButtonElement {
  const made = element('button', words)
  made.type = 'button'
  made.addEventListener('click', () => act(made))
  return made
}
