package seamsoak.schedule;

import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.carbon.LineVisibility;
import seamsoak.safety.StepCautions;

/**
 * What stays the same through a schedule.
 *
 * @param billet as its file has it
 * @param shop the assumptions
 * @param visibility when a line shows
 * @param cautions of its steps
 * @param grains of its steel
 */
record Workshop(
    Billet billet, Shop shop, LineVisibility visibility, StepCautions cautions, Grain grains) {}
