import { followerEdgeRoom } from "../../valves/followerEdgeRoom.ts";

export const exhaustFollowerEdgeRoom = followerEdgeRoom("exhaust", "4.66 mm");
