import { BIKE_KEY, CASE_KEY, NEW_CASE } from './case-keys.ts';

/*
 * The built page shows the first question before the script of its flow has arrived, and on a slow line that takes
 * seconds. A tap on one of its answers is kept on the button and shown as taken; the flow takes it once it is awake.
 */

/** On the place of the flow, once its own script hears the taps. */
export const AWAKE = 'data-awake';
/** On the button of the answer that was tapped before. */
export const TAPPED = 'data-tapped';

/**
 * Runs below the first question, as soon as it is there. Where a case, a bike or a link is going to be opened, another
 * question may come, so there the answers stay as they are until then. The security policy knows this text by its hash.
 */
export const KEEP_FIRST_TAP = `{
const flow=document.getElementById('flow'),at=location.hash;
let other=at.includes('.');
try{other||=at!=='#${NEW_CASE}'&&localStorage.getItem('${CASE_KEY}'+flow.dataset.id)!==null||localStorage.getItem('${BIKE_KEY}')!==null}catch{}
if(!other){
for(const button of flow.querySelectorAll('.answers button'))button.disabled=false;
flow.addEventListener('click',({target})=>{
const button=target.closest('.answers button');
if(!button||flow.hasAttribute('${AWAKE}'))return;
for(const one of flow.querySelectorAll('[${TAPPED}]')){one.removeAttribute('${TAPPED}');one.removeAttribute('aria-pressed')}
button.setAttribute('${TAPPED}','');
button.setAttribute('aria-pressed','true');
let said=flow.querySelector('.tap-taken');
if(!said){said=document.createElement('p');said.className='hint tap-taken';said.setAttribute('role','status');flow.querySelector('.answers').append(said)}
said.textContent='Taken. The next question is on its way.'})}
}`;

/** The flow hears taps from now on. Gives the button that was tapped before, if any, as if nobody had touched it. */
export function takeFirstTap(): HTMLButtonElement | undefined {
  const flow = document.getElementById('flow');
  const button = flow?.querySelector<HTMLButtonElement>(`button[${TAPPED}]`);
  flow?.setAttribute(AWAKE, '');
  flow?.querySelector('.tap-taken')?.remove();
  button?.removeAttribute(TAPPED);
  button?.removeAttribute('aria-pressed');
  return button ?? undefined;
}
