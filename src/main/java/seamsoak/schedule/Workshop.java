package seamsoak.schedule;

import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.safety.StepCautions;
import seamsoak.state.Grain;

/**
 * What stays the same through a schedule.
 *
 * @param billet as its file has it
 * @param shop the assumptions
 * @param cautions of its steps
 * @param grains of its steel
 */
record Workshop(Billet billet, Shop shop, StepCautions cautions, Grain grains) {}
