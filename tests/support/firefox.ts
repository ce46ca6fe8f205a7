import { existsSync } from 'node:fs'
import puppeteer from 'puppeteer'

/** A second engine, where Debian's packages put it; undefined where there is none. */
export const firefox = ['/usr/bin/firefox-esr', '/usr/bin/firefox'].find((file) => existsSync(file))

export const openFirefox = () =>
  puppeteer.launch({ browser: 'firefox', executablePath: firefox ?? '', headless: true })
