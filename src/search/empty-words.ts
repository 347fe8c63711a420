import { tokensOf } from './tokens.ts';

/** Words that stand in every question and tell nothing, in English, German and Spanish. */
export const EMPTY: ReadonlySet<string> = new Set(
  tokensOf(
    `a an and are as at be been being but by can could do does for from has have he his her i if in is it its just me my of
     off on or our really she so some still such than that the them their then there these they this those to up us very was
     we will with would you your

     aber auch bei bin das dass dem den der des die doch ein eine einem einen einer er es etwas euch haben hat habe ich ihr im
     in ist kann man mal mein meine meinen mit nach noch ob oder sein seine sich sind um und uns von war waren wegen weil wenn
     wir wird wo wurde wurden zum zur

     al cuando de del el en es esa ese eso esta estan este fue ha hay la las le les lo los mas me mi mis muy nos o para pero
     por que se sobre son su te tu un una y ya yo`,
  ),
);
